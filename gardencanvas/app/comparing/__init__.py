"""Layouts as variants: a list of them, and two side by side in numbers and plots."""
