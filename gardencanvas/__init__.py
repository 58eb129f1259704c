"""Garden Canvas: plan several crops in the same ground."""

__version__ = "0.1.0"
