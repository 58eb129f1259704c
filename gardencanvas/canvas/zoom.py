"""Zoom: how many pixels a centimetre takes, and how far that may go."""

LEAST, MOST, ACTUAL = 0.02, 24.0, 2.0  # pixels per centimetre
STEP = 1.2


def bounded(scale: float) -> float:
    """The scale within its limits."""
    return min(max(scale, LEAST), MOST)
