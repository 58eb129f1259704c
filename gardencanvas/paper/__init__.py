"""Bed maps as pages, in millimetres, black on white."""
