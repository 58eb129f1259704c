"""Tables as .csv (RFC 4180), safe to open in a spreadsheet."""

import csv
import io
from collections.abc import Iterable, Sequence

Cell = str | int | float | None

# A cell that begins with one of these may be run as a formula by a spreadsheet (OWASP, "CSV injection"), the
# wide forms too where the spreadsheet is set to Japanese.
_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")


def csv_text(rows: Iterable[Sequence[Cell]]) -> str:
    """Rows as text: lines end with CR LF, quotes where they are needed, None is empty.

    Text that a spreadsheet would run as a formula gets an apostrophe before it; numbers stay numbers.
    """
    made = io.StringIO(newline="")
    writer = csv.writer(made, lineterminator="\r\n")
    for row in rows:
        writer.writerow([_safe(cell) for cell in row])
    return made.getvalue()


def _safe(cell: Cell) -> Cell:
    if isinstance(cell, str) and cell.startswith(_FORMULA):
        return f"'{cell}"
    return "" if cell is None else cell
