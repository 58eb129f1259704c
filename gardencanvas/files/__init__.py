"""Open and save gardens."""
