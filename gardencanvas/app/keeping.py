"""Where a grower's own record is kept."""

GARDEN, LIBRARY = "garden", "library"
