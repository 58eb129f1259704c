"""Compare words as people type them: without accents, and with slips of the finger."""

import unicodedata

# Letters that carry no separable accent, as people type them on another keyboard.
_PLAIN = str.maketrans({"ø": "o", "ł": "l", "đ": "d", "ð": "d", "þ": "th", "æ": "ae", "œ": "oe", "ı": "i"})


def folded(text: str) -> str:
    """Lower case without accents; hyphens and apostrophes part words or vanish."""
    apart = unicodedata.normalize("NFKD", text.casefold())
    plain = "".join(c for c in apart if not unicodedata.combining(c)).translate(_PLAIN)
    return plain.replace("-", " ").replace("’", "").replace("'", "")


def words(text: str) -> list[str]:
    """The folded words of a text, without brackets and other marks."""
    return "".join(c if c.isalnum() else " " for c in folded(text)).split()


def slips(asked: str, word: str, most: int) -> int | None:
    """Fewest slips that make what is typed the beginning of a word, or all of it.

    A slip is a letter to add, leave out, change or swap with the next (optimal string alignment: a swapped
    pair is not edited again). None where more than ``most`` are needed.
    """
    if len(asked) - len(word) > most:
        return None
    word = word[: len(asked) + most]
    far = most + 1  # as good as never
    last = list(range(len(word) + 1))
    before = last
    for i, a in enumerate(asked, 1):
        row = [far] * (len(word) + 1)
        if i <= most:
            row[0] = i
        for j in range(max(i - most, 1), min(i + most, len(word)) + 1):  # farther off the cost is above most
            b = word[j - 1]
            cost = last[j - 1] if a == b else 1 + min(last[j - 1], last[j], row[j - 1])
            if i > 1 and j > 1 and a == word[j - 2] and asked[i - 2] == b:
                cost = min(cost, before[j - 2] + 1)
            row[j] = cost
        if min(row) > most:
            return None
        before, last = last, row
    return fewest if (fewest := min(last)) <= most else None


def forgiven(length: int) -> int:
    """Slips that a typed word of some length may hold (common practice): none below four letters."""
    return 0 if length < 4 else 1 if length < 8 else 2
