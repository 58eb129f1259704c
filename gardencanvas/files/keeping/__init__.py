"""Unsaved work and earlier versions: journals, who may write a file, what a crash left, saved states."""
