"""Filling a bed, a strip or a box of it with a crop."""
