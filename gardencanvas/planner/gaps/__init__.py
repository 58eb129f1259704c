"""Gaps: free ground, what else fits there, and until when."""
