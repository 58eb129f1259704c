"""Counts: yields, land equivalent ratios, water, seeds, jobs, and the comparison of two layouts."""
