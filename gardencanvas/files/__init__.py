"""Open and save gardens."""

from gardencanvas.files.errors import CannotWrite, FileRefused, NewerFormat
from gardencanvas.files.reading import garden_from_bytes, open_garden, open_stamped
from gardencanvas.files.stamps import Stamp
from gardencanvas.files.writing import SUFFIX, garden_to_bytes, save_garden, write_whole

__all__ = [
    "SUFFIX",
    "CannotWrite",
    "FileRefused",
    "NewerFormat",
    "Stamp",
    "garden_from_bytes",
    "garden_to_bytes",
    "open_garden",
    "open_stamped",
    "save_garden",
    "write_whole",
]
