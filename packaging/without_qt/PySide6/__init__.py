"""Stands in front of the real PySide6 while the rooms without Qt are tested."""

raise ImportError("PySide6 is out of reach in this run: the rooms without Qt must not need it")
