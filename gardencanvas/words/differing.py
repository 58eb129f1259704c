"""Words for what differs between two layouts."""

from collections import Counter
from collections.abc import Iterable, Sequence

from gardencanvas.fit.report import Verdict
from gardencanvas.garden.differing import Differs
from gardencanvas.words import named
from gardencanvas.words.language import mark, say

_COUNTED = {
    Differs.ONLY_HERE: mark("{count} only here"),
    Differs.MOVED: mark("{count} moved"),
    Differs.RETIMED: mark("{count} re-timed"),
    Differs.OTHERWISE: mark("{count} changed"),
}


def told(how: Sequence[Differs], verdict: Verdict | None) -> str:
    """A few words beside an item: how it differs, and its verdict where that differs."""
    words = [named.differs(h) for h in how]
    if verdict is not None:
        words.append(say("here {verdict}", verdict=named.verdict(verdict)))
    return ", ".join(words)


def summed(differing: Iterable[Sequence[Differs]]) -> str:
    """How many items differ and how, in one line."""
    counts = Counter(h for how in differing for h in how)
    parts = [say(_COUNTED[h], count=counts[h]) for h in Differs if counts[h]]
    return ", ".join(parts) or say("nothing differs")
