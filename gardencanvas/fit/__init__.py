"""What fits beside what: which plants meet in space, height and time, and how well they do."""

from gardencanvas.fit.checker import Checker, check

__all__ = ["Checker", "check"]
