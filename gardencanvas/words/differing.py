"""Words for what differs between two layouts."""

from collections import Counter
from collections.abc import Iterable, Sequence

from gardencanvas.fit.report import Verdict
from gardencanvas.garden.differing import Differs


def told(how: Sequence[Differs], verdict: Verdict | None) -> str:
    """A few words beside an item: how it differs, and its verdict where that differs."""
    words = [h.value for h in how]
    if verdict is not None:
        words.append(f"here {verdict.word}")
    return ", ".join(words)


def summed(differing: Iterable[Sequence[Differs]]) -> str:
    """How many items differ and how, in one line."""
    counts = Counter(h for how in differing for h in how)
    parts = [f"{counts[h]} {h.value}" for h in Differs if counts[h]]
    return ", ".join(parts) or "nothing differs"
