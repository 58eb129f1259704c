"""Find crops as one types: by any name, in any listed language, with a typo."""

import unicodedata
from dataclasses import dataclass

from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.crops.model import Crop, Group, Layer


@dataclass(frozen=True)
class Wanted:
    """Filters; ``None`` lets everything through."""

    group: Group | None = None
    layer: Layer | None = None
    family: str | None = None

    def lets(self, crop: Crop) -> bool:
        """Whether a crop passes."""
        return (
            self.group in (None, crop.group)
            and self.layer in (None, crop.layer)
            and self.family in (None, crop.family)
        )


def folded(text: str) -> str:
    """Lower case without accents."""
    apart = unicodedata.normalize("NFKD", text.casefold())
    return "".join(c for c in apart if not unicodedata.combining(c))


def search(catalogue: Catalogue, text: str, wanted: Wanted | None = None) -> tuple[Crop, ...]:
    """Crops that match, best first: name begins so, a word of it, another name, then one typo away."""
    asked = folded(text.strip())[:80]
    wanted = wanted or Wanted()
    ranked = []
    for crop in catalogue.crops:
        if wanted.lets(crop) and (rank := _rank(crop, asked)) is not None:
            ranked.append((rank, crop.name.casefold(), crop))
    return tuple(crop for _, _, crop in sorted(ranked, key=lambda r: r[:2]))


def _rank(crop: Crop, asked: str) -> int | None:
    if not asked:
        return 0
    name = folded(crop.name)
    if name.startswith(asked):
        return 0
    if any(w.startswith(asked) for w in name.replace("-", " ").split()):
        return 1
    others = [folded(n) for n in (*crop.other_names, *crop.names.values(), crop.botanical, crop.family)]
    if any(w.startswith(asked) for other in others for w in (other, *other.split())):
        return 2
    if len(asked) >= 3 and any(asked in n for n in (name, *others)):
        return 3
    words = [w for n in (name, *others) for w in (n, *n.split())]
    if len(asked) >= 4 and any(_one_typo(asked, w[: len(asked) + 1]) or _one_typo(asked, w) for w in words):
        return 4
    return None


def _one_typo(asked: str, word: str) -> bool:
    """Whether one letter added, missing, wrong or swapped with the next makes them equal."""
    if abs(len(asked) - len(word)) > 1:
        return False
    at = next(
        (i for i, (a, b) in enumerate(zip(asked, word, strict=False)) if a != b), min(len(asked), len(word))
    )
    a, b = asked[at:], word[at:]
    return a[1:] == b[1:] or a[1:] == b or a == b[1:] or (a[1::-1] == b[:2] and a[2:] == b[2:])
