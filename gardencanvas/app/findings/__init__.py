"""All findings of the layout: the list, and one of them in full."""
