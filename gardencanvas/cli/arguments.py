"""What several commands ask for, and how a bad argument is refused."""

import argparse
from datetime import date
from typing import NoReturn

from gardencanvas.files import FileRefused
from gardencanvas.garden.garden import Garden, Layout

OK, CLASH, UNREADABLE = 0, 1, 2


class Arguments(argparse.ArgumentParser):
    """Bad arguments end with exit code 2 and one sentence."""

    def error(self, message: str) -> NoReturn:
        """Say what is wrong and where help is."""
        self.exit(UNREADABLE, f"{self.prog}: {message}. See {self.prog} --help.\n")


def a_date(text: str) -> date:
    """A day such as 2027-07-01."""
    try:
        return date.fromisoformat(text)
    except ValueError as error:
        raise argparse.ArgumentTypeError(f"{text!r} is not a date such as 2027-07-01") from error


def a_dpi(text: str) -> int:
    """Dots to an inch."""
    if not text.isdigit() or not 36 <= int(text) <= 1200:
        raise argparse.ArgumentTypeError(f"{text!r} is not a whole number from 36 to 1200")
    return int(text)


def a_scale(text: str) -> int:
    """20 for 1:20."""
    number = text.removeprefix("1:")
    if not number.isdigit() or not 5 <= int(number) <= 1000:
        raise argparse.ArgumentTypeError(f"{text!r} is not a scale from 5 to 1000")
    return int(number)


def chosen_layout(garden: Garden, name: str | None) -> Layout:
    """The layout of that id or name; the first where none is named.

    Raises
    ------
    FileRefused
        Naming the layouts there are.
    """
    try:
        return garden.layout(name)
    except KeyError as error:
        known = ", ".join(repr(x.name) for x in garden.layouts)
        raise FileRefused(f"There is no layout {name!r} in it; it has {known}.") from error
