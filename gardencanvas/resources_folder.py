"""Where the shipped data lies: inside an installed wheel, or beside the package in a checkout."""

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent


def resources() -> Path:
    """Folder that holds crops/, icons/, demo/ and the rest of the shipped data.

    Raises
    ------
    FileNotFoundError
        If neither an installed nor a checked-out copy is there: the installation is damaged.
    """
    for folder in (_PACKAGE / "resources", _PACKAGE.parent / "resources"):
        if (folder / "crops").is_dir():
            return folder
    raise FileNotFoundError(f"The shipped data is missing beside {_PACKAGE}. Install Garden Canvas again.")
