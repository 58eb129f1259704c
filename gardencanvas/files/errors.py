"""What can go wrong with a file, each in a sentence that says what to do."""

from gardencanvas.crops.errors import Sayable


class FileRefused(Sayable):
    """A file that cannot be opened or written; ``str()`` is one sentence for the grower."""


class NewerFormat(FileRefused):
    """The file was written by a later version of the program."""


class CannotWrite(FileRefused):
    """The garden could not be written; what was on disk before is still there."""
