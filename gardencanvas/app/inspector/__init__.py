"""The inspector: what is selected, in plain words, and its exact numbers to edit."""
