"""Filling ground with one crop: as many plants as fit at a spacing, in the pattern that holds most."""
