"""Open and save gardens."""

from gardencanvas.files.errors import CannotWrite, FileRefused, NewerFormat
from gardencanvas.files.reading import garden_from_bytes, open_garden
from gardencanvas.files.writing import SUFFIX, garden_to_bytes, save_garden, write_whole

__all__ = [
    "SUFFIX",
    "CannotWrite",
    "FileRefused",
    "NewerFormat",
    "garden_from_bytes",
    "garden_to_bytes",
    "open_garden",
    "save_garden",
    "write_whole",
]
