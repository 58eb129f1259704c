"""Finding place names as they are typed: without accents, from any word's beginning, with one slip.

Names are kept folded in one long text, so that a search is a few comparisons of whole arrays.
"""

import unicodedata

import numpy as np
from numpy.typing import NDArray

Ints = NDArray[np.int64]
Bytes = NDArray[np.uint8]

LINE, NAME = b"\n", b"\t"  # between places; between several names of one place
SHORTEST_SLIP = 4  # bytes: in shorter words one slip would match nearly anything

# Letters that Unicode does not take apart into a plain letter and its mark.
_PLAIN = str.maketrans(
    {"ø": "o", "đ": "d", "ł": "l", "ı": "i", "æ": "ae", "œ": "oe", "þ": "th", "ð": "d", "ə": "e", "ħ": "h"}
)
_UNHEARD = frozenset("'’‘ʻʼ`´ʿʾ")  # written within words or left out, as in Sana'a


def fold(text: str) -> str:
    """The text in small plain letters and digits, words parted by one space.

    Accents go, other scripts stay: ``São Paulo`` and ``sao  paulo`` fold to the same.
    """
    # Taking apart can bring up capitals, and small letters can come apart once more.
    apart = unicodedata.normalize("NFKD", text).casefold()
    apart = unicodedata.normalize("NFKD", apart).casefold().translate(_PLAIN)
    kept = (c for c in apart if not unicodedata.combining(c) and c not in _UNHEARD)
    return unicodedata.normalize("NFC", " ".join("".join(c if c.isalnum() else " " for c in kept).split()))


class Names:
    """The folded names of many places, one line a place.

    Parameters
    ----------
    text
        Lines parted by ``LINE``, the names within a line by ``NAME``; neither begins nor ends with one.

    Every search takes a folded, non-empty query in UTF-8 and returns the sorted numbers of the lines found.
    """

    def __init__(self, text: bytes) -> None:
        whole = LINE + text + LINE
        ends = np.flatnonzero(np.frombuffer(whole, dtype=np.uint8) < ord(" "))
        self.longest = int(np.diff(ends).max()) - 1
        padded = whole + bytes(self.longest + 3)  # so that no comparison reads past the end
        self._text: Bytes = np.frombuffer(padded, dtype=np.uint8)
        lines = ends[self._text[ends] == LINE[0]]
        self._size = len(whole)
        self._begins, self.count = lines[:-1], len(lines) - 1
        self._words: Ints | None = None
        self._last: tuple[bytes, Ints] = (b"", np.empty(0, dtype=np.int64))

    def whole(self, query: bytes) -> Ints:
        """Lines with a name that is the query."""
        at = self._found(query)
        before, after = self._text[at - 1], self._text[at + len(query)]
        return self._lines(at[(before < ord(" ")) & (after < ord(" "))])

    def beginning(self, query: bytes) -> Ints:
        """Lines where a word of a name, with what follows it, begins with the query."""
        at = self._found(query)
        return self._lines(at[self._text[at - 1] <= ord(" ")])

    def within(self, query: bytes) -> Ints:
        """Lines where a name holds the query anywhere."""
        return self._lines(self._found(query))

    def slipped(self, query: bytes) -> tuple[Ints, Ints]:
        """Lines where a word's beginning differs from the query by one slip: up to a name's end, and all.

        A slip is one letter wrong, missing or too many, or two neighbours swapped. Nothing for queries
        shorter than ``SHORTEST_SLIP``.
        """
        typed: Bytes = np.frombuffer(query, dtype=np.uint8)
        m = len(typed)
        if not SHORTEST_SLIP <= m <= self.longest + 1:
            return np.empty(0, dtype=np.int64), np.empty(0, dtype=np.int64)
        at = self._half_right(typed)
        at = at[(self._window(at, m - 1) >= ord(" ")).all(axis=1)]
        at = at[_one_slip(self._window(at, m + 1), typed)]
        ends = (self._text[at - 1] < ord(" ")) & (self._window(at, m + 2)[:, m - 1 :] < ord(" ")).any(axis=1)
        return self._lines(at[ends]), self._lines(at)

    def _found(self, query: bytes) -> Ints:
        """Where the query stands in the text; remembered, as the searches for one query follow each other."""
        if query != self._last[0]:
            at = np.empty(0, dtype=np.int64)
            if len(query) <= self.longest:
                at = self._kept(np.flatnonzero(self._text == query[0]), query[1:], 1)
            self._last = (query, at)
        return self._last[1]

    def _kept(self, at: Ints, part: bytes, offset: int) -> Ints:
        """Those positions at which the text goes on with the part, from an offset on."""
        for step, byte in enumerate(part):
            at = at[self._text[at + (offset + step)] == byte]
        return at

    def _half_right(self, typed: Bytes) -> Ints:
        """Word beginnings where half of the query stands: one slip leaves the other half unharmed.

        All but two letters swapped in the middle, which harm both: that one slip is looked for whole.
        """
        if self._words is None:
            self._words = np.flatnonzero(self._text[: self._size - 1] <= ord(" ")) + 1
        half = len(typed) // 2
        first, second = typed[:half].tobytes(), typed[half:].tobytes()
        parts = [self._kept(self._words, first, 0)]
        parts += [self._kept(self._words, second, half + shift) for shift in (-1, 0, 1)]
        swapped = first[:-1] + second[:1] + first[-1:] + second[1:]
        parts.append(self._kept(self._words, swapped, 0))
        return np.unique(np.concatenate(parts))

    def _window(self, at: Ints, width: int) -> Bytes:
        return np.asarray(self._text[at[:, None] + np.arange(width)])

    def _lines(self, at: Ints) -> Ints:
        return np.unique(np.searchsorted(self._begins, at) - 1)


def _one_slip(text: Bytes, typed: Bytes) -> NDArray[np.bool_]:
    """Which rows of a text, shape (n, m + 1), begin with m typed bytes but for one slip."""
    m = len(typed)
    same = text[:, :m] == typed
    head = _run(same)
    tail = _run(same[:, ::-1])
    wrong = head + tail >= m - 1
    missing = head + _run((text[:, 1:] == typed)[:, ::-1]) >= m
    extra = head + _run((text[:, : m - 1] == typed[1:])[:, ::-1]) >= m - 1
    rows, pivot = np.arange(len(text)), np.minimum(head, m - 2)
    crossed = (text[rows, pivot] == typed[pivot + 1]) & (text[rows, pivot + 1] == typed[pivot])
    swapped = crossed & (pivot + 2 + tail >= m)
    return np.asarray(wrong | missing | extra | swapped)


def _run(matches: NDArray[np.bool_]) -> Ints:
    """How many leading entries of each row match."""
    return np.asarray(np.cumprod(matches, axis=1, dtype=np.int64).sum(axis=1))
