"""Published pairs of crops laid out as a grower would, and what the engine says of them.

Run ``python -m tests.oracles.pairs`` to write ``pairs_table.md`` anew.

Assumptions, the same for every pair: single rows of the two crops by turns, 6 m long, six of each, at each
crop's usual spacing in the row and half the sum of their usual distances between rows (*by turns*); and the
second crop in the middle between rows of the first that keep their usual distance (*between*, an addition to
a full stand). Where the data of Paut et al. 2024 tell how trials were laid out, the pair counts *as tried*:
replacement series by turns, additive ones between. Each starts on its own usual date in a warm temperate
climate (last frost 28 April): hardy ones 10 April, half-hardy ones 10 May, tender ones 25 May. Climbers have
their canes. What trials of the pair say is left out of the verdict, and so is what concerns one planting
alone: it stands on what the plants take from each other.
"""

import csv
import re
from collections import Counter
from collections.abc import Callable
from datetime import date
from functools import cache
from pathlib import Path
from typing import NamedTuple

import numpy as np
from scipy.stats import mannwhitneyu

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.crops.model import Crop
from gardencanvas.fit import check
from gardencanvas.fit.beside import vault
from gardencanvas.fit.report import FitReport, Verdict
from gardencanvas.fit.standing import Standing
from gardencanvas.fit.support import wants_support
from gardencanvas.garden.edits import add, rebuilt
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.ground import Bed, LineSupport
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.site import Climate
from gardencanvas.measures.yields.bedful import bedfuls
from gardencanvas.measures.yields.relative import shared
from tests.garden.makers import MEANS, bed, garden, site

HERE = Path(__file__).parent
TABLE = HERE / "pairs_table.md"
NOTES = HERE / "pairs_notes.md"  # what is written by hand below the table
ROWS, LENGTH_M = 6, 6.0
STARTS = {"very hardy": (4, 10), "hardy": (4, 10), "half-hardy": (5, 10), "tender": (5, 25)}
# Names of the trials that the catalogue has under another; dry bean and grain maize stand for those it has.
NAMES = {
    "bean": "dwarf-bean", "bush bean": "dwarf-bean", "green bean": "dwarf-bean", "maize": "sweetcorn",
    "brussels sprout": "brussels-sprouts", "fava bean": "broad-bean", "soybean": "soya",
}  # fmt: skip
UNTRIED = {"trials"}  # codes that say again what the trials said


class Pair(NamedTuple):
    """Two crops and the rows of trials that speak of them."""

    one: str
    two: str
    reported: tuple[dict[str, str], ...]

    @property
    def gains(self) -> bool:
        return any(r["effect"] == "yield_gain" for r in self.reported)

    @property
    def competes(self) -> bool:
        return any(r["effect"] == "competition" for r in self.reported)


class Outcome(NamedTuple):
    """What the engine says of one layout of a pair.

    ``relative`` is the yield of either crop over that of the crop alone on the whole bed.
    """

    verdict: Verdict
    codes: tuple[str, ...]
    relative: tuple[float, float]


@cache
def pairs() -> tuple[Pair, ...]:
    """Every pair of the trials, in the order in which they are first named."""
    with (HERE / "data" / "intercrop_pairs.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    found: dict[tuple[str, str], list[dict[str, str]]] = {}
    for row in rows:
        for one in _names(row["crop_a"]):
            for two in _names(row["crop_b"]):
                key = (two, one) if (two, one) in found else (one, two)
                found.setdefault(key, []).append(row)
    return tuple(Pair(one, two, tuple(some)) for (one, two), some in found.items())


def _names(text: str) -> list[str]:
    names = [n.strip() for n in re.split(r"[/,]", text)]
    return [NAMES.get(n, n.replace(" ", "-")) for n in names]


def by_turns(pair: Pair) -> Outcome:
    """Rows of both by turns, none closer than both crops' usual distances."""
    a, b = catalogue().resolve(pair.one), catalogue().resolve(pair.two)
    apart = (a.between_rows_m.mid + b.between_rows_m.mid) / 2
    return _outcome(a.id, b.id, 2 * apart, apart)


def between(pair: Pair) -> Outcome:
    """The second crop added between rows of the first."""
    across = catalogue().resolve(pair.one).between_rows_m.mid
    return _outcome(pair.one, pair.two, across, across / 2)


@cache
def _outcome(one: str, two: str, across: float, apart: float) -> Outcome:
    a, b = catalogue().resolve(one), catalogue().resolve(two)
    plantings = [_planting("one", a, across, 0.0), _planting("two", b, across, apart)]
    ground = bed(length=LENGTH_M + 2, width=2 * ROWS * across + 4, x=-1.0, y=-2.0)
    climate = Climate(mean_c=tuple(m + 3.0 for m in MEANS))
    made = garden(*plantings, beds=(ground,), site=site(climate=climate))
    supports = [s for p, c in zip(plantings, (a, b), strict=True) if wants_support(c) for s in _canes(p)]
    relative = _relative(made, bed(length=LENGTH_M, width=ROWS * across, y=-across / 4))
    return _judged(check(add(made, "l1", supports) if supports else made), relative)


def _judged(report: FitReport, relative: tuple[float, float]) -> Outcome:
    of_both = [f for f in report.findings if len(f.plantings) > 1 and f.code not in UNTRIED]
    worst = max((f.verdict for f in of_both), default=Verdict.CLEAR)
    return Outcome(worst, tuple(sorted({f.code for f in of_both if f.verdict == worst})), relative)


def _relative(made: Garden, ground: Bed) -> tuple[float, float]:
    """Relative yields on a bed that is no wider than the rows' own ground."""
    layout = rebuilt(made.layouts[0], beds=(ground,))
    (bedful,) = bedfuls(layout, Standing(catalogue(), made.site, layout).of(layout))
    found = shared(bedful, vault(made.site)).relative
    mine = np.array([s.planting.id == "one" for s in bedful.stands])
    return float(found[mine].sum()), float(found[~mine].sum())


def _planting(name: str, crop: Crop, across: float, offset: float) -> Planting:
    month, day = STARTS[crop.frost.value if crop.frost else "hardy"]
    pattern = Rows(
        origin=(0.0, offset), length_m=LENGTH_M, rows=ROWS, spacing_m=crop.in_row_m.mid, row_spacing_m=across
    )
    return Planting(
        id=name,
        crop=crop.id,
        pattern=pattern,
        start=Start(kind=crop.starts[0].value, on=date(2027, month, day)),
    )


def _canes(planting: Planting) -> list[LineSupport]:
    return [
        LineSupport(
            id=f"{planting.id}-{k}",
            kind="cane row",
            name="canes",
            begin=(0.0, y),
            end=(LENGTH_M, y),
            height_m=2.2,
        )
        for k, y in enumerate(sorted({round(float(y), 6) for y in planting.stations[:, 1]}))
    ]


@cache
def designs() -> dict[frozenset[str], Counter[str]]:
    """How many treatments of each pair were additive, and in how many one replaced plants of the other."""
    found: dict[frozenset[str], Counter[str]] = {}
    with (HERE / "data" / "intercrop_trials.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            (one,), (two,) = _names(row["crop_a"].lower()), _names(row["crop_b"].lower())
            if row["design"]:
                found.setdefault(frozenset((one, two)), Counter())[row["design"].lower()] += 1
    return found


def design(pair: Pair) -> str:
    """The design of most of its treatments: ``additive``, ``replacement``; empty where it is not told."""
    some = designs().get(frozenset((pair.one, pair.two)))
    return some.most_common(1)[0][0] if some else ""


def as_tried(pair: Pair) -> Outcome | None:
    """The layout that comes nearest to the trials; None where their design is not told."""
    kind = design(pair)
    if not kind:
        return None
    return between(pair) if kind == "additive" else by_turns(pair)


def misses(layout: Callable[[Pair], Outcome | None]) -> tuple[list[Pair], list[Pair]]:
    """Pairs with a gain that clash, and pairs that only compete and neither strain nor clash."""
    some = [(p, found.verdict) for p in pairs() if (found := layout(p)) is not None]
    return (
        [p for p, verdict in some if p.gains and verdict is Verdict.CLASHES],
        [p for p, verdict in some if not p.gains and verdict <= Verdict.SHARES],
    )


def table() -> str:
    """The table as Markdown."""
    lines = [
        "# Published pairs, and what the engine says of them",
        "",
        "Written by `python -m tests.oracles.pairs`; assumptions in `pairs.py`, figures in",
        "`data/intercrop_pairs.csv`. The engine's verdict leaves out what it has from the same trials.",
        "LER: total land equivalent ratio, median (least–most); n: observations in papers; design: of most",
        "treatments in `data/intercrop_trials.csv`. The figure behind a verdict is the ratio that the engine",
        "foretells.",
        "",
    ]
    for title, some in (
        ("## With a gain of both together", [p for p in pairs() if p.gains]),
        ("## Competing only", [p for p in pairs() if not p.gains]),
    ):
        lines += [
            title,
            "",
            "| pair | reported | n | design | by turns | between | source |",
            "|---|---|---|---|---|---|---|",
        ]
        lines += [_line(p) for p in some]
        lines.append("")
    for name, layout in LAYOUTS:
        clashing, silent = misses(layout)
        laid = [p for p in pairs() if layout(p) is not None]
        gains = sum(p.gains for p in laid)
        competing = len(laid) - gains
        lines.append(
            f"Misses, {name}: {len(clashing)} of {gains} pairs with a gain clash"
            f"{_list(clashing)}; {len(silent)} of {competing} pairs that only compete come out as "
            f"clear or shares{_list(silent)}."
        )
        lines.append("")
    return "\n".join([*lines, *_apart(), ""])


def _apart() -> list[str]:
    """How far the engine's figures tell pairs that only compete from those with a gain."""
    lines = [
        "In how many of 100 pairs of one that only competes and one with a gain the first fares worse:",
        "",
    ]
    for name, layout in LAYOUTS[:2]:
        outcomes = [(p.gains, layout(p)) for p in pairs()]
        for what, figure in (
            ("verdict", lambda o: -float(o.verdict)),
            ("total ratio", lambda o: sum(o.relative)),
            ("ratio of the first crop", lambda o: o.relative[0]),
        ):
            gain, compete = ([figure(o) for g, o in outcomes if g is want] for want in (True, False))
            worse = mannwhitneyu(gain, compete).statistic / (len(gain) * len(compete))
            lines.append(f"- {name}, by the {what}: {100 * worse:.0f}")
    return [
        *lines,
        "",
        *NOTES.read_text(encoding="utf-8").splitlines(),
    ]


def _list(some: list[Pair]) -> str:
    return f" ({', '.join(f'{p.one} – {p.two}' for p in some)})" if some else ""


def _line(pair: Pair) -> str:
    said, counts, sources = [], [], []
    for r in pair.reported:
        if "LER" in r["measure"]:
            said.append(f"LER {r['value']}")
        else:
            said.append(f"{r['measure']}: {r['value']}")
        counts.append(f"{r['n_observations']} in {r['n_papers']}" if r["n_observations"] else "–")
        sources.append(r["citation"].split(", doi")[0])
    cells = [
        f"{pair.one} – {pair.two}",
        "; ".join(dict.fromkeys(said)),
        "; ".join(counts),
        design(pair) or "–",
        _cell(by_turns(pair)),
        _cell(between(pair)),
        "; ".join(dict.fromkeys(sources)),
    ]
    return "| " + " | ".join(c.replace("|", "/") for c in cells) + " |"


def _cell(outcome: Outcome) -> str:
    codes = f" ({', '.join(outcome.codes)})" if outcome.codes else ""
    return f"{outcome.verdict.word}{codes} {sum(outcome.relative):.2f}"


LAYOUTS: tuple[tuple[str, Callable[[Pair], Outcome | None]], ...] = (
    ("by turns", by_turns),
    ("between", between),
    ("as tried", as_tried),
)


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
