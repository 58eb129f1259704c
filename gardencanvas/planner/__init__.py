"""Proposed edits: the planner searches with the fit engine and never decides for the grower."""
