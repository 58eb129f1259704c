"""Which plants meet in space, height, root and time."""
