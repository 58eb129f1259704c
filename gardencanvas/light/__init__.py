"""Sun path, shadows, and light shared between canopies."""
