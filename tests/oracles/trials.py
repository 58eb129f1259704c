"""Published trials of two crops together, laid out as beds, and what the engine predicts of them.

Run ``python -m tests.oracles.trials`` to write ``trials_table.md`` anew.

The trials (Paut et al. 2024, Scientific Data 11:5, doi 10.1038/s41597-023-02831-7; article CC BY 4.0) give
yields alone and together, and in a word design and pattern; neither distances nor dates. So the same is
assumed of all:

- Both crops go into the bed on 10 May, each started its usual way, in the warm temperate climate of
  ``pairs.py``; there is no frost.
- *Replacement*: half of each crop's usual number of plants. *Additive*, and where nothing is stated: the
  first crop's full number, and half of the second's between its rows.
- *Row*, *Mixed*, and where nothing is stated: single rows by turns. *Strip*: three rows by turns with three.
- Dry bean stands for bean as dwarf bean, grain maize as sweetcorn; heights, leaves and days are those of the
  catalogue.

No parameter of the model is fitted to these trials, but the assumptions above are not blind: the alternatives
in the table's last parts were run over all trials while the model was written. In replacement rows each crop
at its usual distances came first and did worse than half of each crop's plants, which is kept because it is
what a replacement series is by definition. The climate was first 3 °C warmer, and was made that of
``pairs.py``, which changes little. The half stand of an added crop stayed as first set down. Weakening the
competition of other crops by an exponent was tried on the articles of even place, and dropped: it lowered the
bias and the error, and worsened the rank in the others. So the scores are not those of a blind prediction, in
either half of the articles. Only the width of the range that the program shows (``measures.yields.doubts``)
is taken from the trials as a number: from the articles of even place; those of odd place tell whether it
holds.

On 25 November 2026 light alone gave way to the reciprocal yield law with competition for light and in the
soil (``measures.yields.crowd``). Its constants were there before (the middle of the range in which plants are
taken to hold each other back; depths of roots) or are published (densities of onion and maize; nitrogen from
the air); its form was chosen in sight of the scores, among those told in ``trials_notes.md``. It is not the
one that scored best on the articles of even place: that one was no better on the others.
"""

import csv
from datetime import date
from functools import cache
from pathlib import Path
from typing import NamedTuple

import numpy as np
from scipy.stats import spearmanr

from gardencanvas.crops.catalogue import catalogue
from gardencanvas.fit.beside import vault
from gardencanvas.fit.ground import usual_spacing
from gardencanvas.fit.standing import Standing
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.pattern import Rows
from gardencanvas.garden.planting import Planting, Start
from gardencanvas.garden.site import Climate, Frost
from gardencanvas.measures.yields.bedful import bedfuls
from gardencanvas.measures.yields.doubts import BAND
from gardencanvas.measures.yields.relative import shared
from tests.garden.makers import MEANS, bed, site

HERE = Path(__file__).parent
TABLE = HERE / "trials_table.md"
NOTES = HERE / "trials_notes.md"  # what is written by hand below the table
LENGTH_M, PERIODS, STRIP_ROWS = 6.0, 6, 3
ON = date(2027, 5, 10)
NAMES = {
    "bean": "dwarf-bean", "maize": "sweetcorn", "brussels-sprout": "brussels-sprouts",
    "fava-bean": "broad-bean", "soybean": "soya", "fennel": "florence-fennel",
}  # fmt: skip


class Assumed(NamedTuple):
    """What the papers do not state."""

    second: float = 0.5  # density of a crop that is added
    by_distance: bool = False  # in replacements each crop at its usual distances, not half of its plants
    warmer_c: float = 3.0  # than the climate of the tests


AS_STATED = Assumed()


class Trial(NamedTuple):
    """One treatment of one trial, with its partial land equivalent ratios."""

    article: int
    one: str
    two: str
    design: str
    pattern: str
    observed: tuple[float, float]
    paper: str

    @property
    def replaces(self) -> bool:
        return self.design == "Replacement"


@cache
def trials() -> tuple[Trial, ...]:
    """All treatments whose published ratio can be recomputed from its yields."""
    with (HERE / "data" / "intercrop_trials.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    return tuple(
        Trial(
            int(r["article"]), _crop(r["crop_a"]), _crop(r["crop_b"]), r["design"], r["pattern"],
            (float(r["relative_a"]), float(r["relative_b"])), r["paper"],
        )
        for r in rows
    )  # fmt: skip


def _crop(name: str) -> str:
    plain = name.lower().replace(" ", "-")
    return NAMES.get(plain, plain)


def first_half() -> np.ndarray:
    """Which trials are of articles of even place in the list, shape (trials,)."""
    articles = sorted({t.article for t in trials()})
    return np.isin([t.article for t in trials()], articles[::2])


def observed() -> np.ndarray:
    """Observed partial ratios, shape (trials, 2)."""
    return np.array([t.observed for t in trials()])


def predicted(assumed: Assumed = AS_STATED) -> np.ndarray:
    """Predicted partial ratios, shape (trials, 2)."""
    return np.array([_predicted(t.one, t.two, t.replaces, t.pattern == "Strip", assumed) for t in trials()])


@cache
def _predicted(one: str, two: str, replaces: bool, strips: bool, assumed: Assumed) -> tuple[float, float]:
    layout = laid_out(one, two, replaces, strips, assumed)
    climate = Climate(mean_c=tuple(m + assumed.warmer_c for m in MEANS))
    place = site(frost=Frost(basis="none"), climate=climate)
    stands = Standing(catalogue(), place, layout).of(layout)
    (bedful,) = bedfuls(layout, stands)
    relative = shared(bedful, vault(place)).relative
    mine = np.array([s.crop.id == one for s in bedful.stands])
    return float(relative[mine].sum()), float(relative[~mine].sum())


def laid_out(one: str, two: str, replaces: bool, strips: bool, assumed: Assumed) -> Layout:
    """A bed of both crops, in rows or strips by turns."""
    (along, across), (along_two, across_two) = (usual_spacing(catalogue().resolve(c)) for c in (one, two))
    rows = STRIP_ROWS if strips else 1
    period = rows * (across + across_two if replaces else across)
    dense = (0.5, 0.5) if replaces else (1.0, assumed.second)
    if replaces and assumed.by_distance:
        dense = (rows * across / period, rows * across_two / period)
    # where the rows of the second crop begin: half-way, but after a strip of the first where it has its own
    begin = rows * across if replaces else period / 2
    own_width = rows * across_two if replaces else 0.0
    plantings = []
    for name, crop, need, density, start, width in (
        ("a", one, along * across, dense[0], 0.0, rows * across),
        ("b", two, along_two * across_two, dense[1], begin, own_width),
    ):
        spacing = need * rows / (density * period)
        for row in range(rows):
            offset = start + (row + 0.5) * width / rows
            plantings.append(_rows(f"{name}-{row}", crop, spacing, period, offset))
    ground = bed(length=LENGTH_M, width=PERIODS * period)
    return Layout(id="l1", name="Trial", year=2027, beds=(ground,), plantings=tuple(plantings))


def _rows(name: str, crop: str, spacing: float, period: float, offset: float) -> Planting:
    """Rows a period apart, the first at an offset from the bed's edge."""
    pattern = Rows(
        origin=(0.0, offset - period / 2), length_m=LENGTH_M, rows=PERIODS, spacing_m=spacing,
        row_spacing_m=period,
    )  # fmt: skip
    kind = catalogue().resolve(crop).starts[0].value
    return Planting(id=name, crop=crop, pattern=pattern, start=Start(kind=kind, on=ON))


class Score(NamedTuple):
    """How well predictions agree with trials, beside the guess that every one is as the median."""

    count: int
    rank_partial: float
    rank_total: float
    error_partial: float
    error_total: float
    guess_partial: float
    guess_total: float


def score(some: np.ndarray | None = None, assumed: Assumed = AS_STATED) -> Score:
    """Score of some of the trials, or of all: rank correlations and mean absolute errors."""
    some = np.ones(len(trials()), dtype=bool) if some is None else some
    p, o = predicted(assumed)[some], observed()[some]
    p_total, o_total = p.sum(axis=1), o.sum(axis=1)
    return Score(
        len(p),
        float(spearmanr(p.ravel(), o.ravel()).statistic),
        float(spearmanr(p_total, o_total).statistic),
        float(np.abs(p - o).mean()),
        float(np.abs(p_total - o_total).mean()),
        float(np.abs(o - np.median(o)).mean()),
        float(np.abs(o_total - np.median(o_total)).mean()),
    )


def within_band() -> tuple[float, float]:
    """Share of partial ratios within the range that is shown: articles of even place, and of odd."""
    factor = observed() / predicted()
    inside = (factor >= BAND[0]) & (factor <= BAND[1])
    half = first_half()
    return float(inside[half].mean()), float(inside[~half].mean())


def of_the_article(some: np.ndarray) -> float:
    """Part of the variance of the logarithm of observed over predicted that articles differ by.

    The intraclass correlation of a one-way analysis of variance with unequal groups.
    """
    missed = np.log(np.maximum(observed(), 0.1) / predicted())[some].ravel()
    article = np.repeat([t.article for t in trials()], 2).reshape(-1, 2)[some].ravel()
    groups = [missed[article == k] for k in np.unique(article)]
    count, many = len(missed), len(groups)
    within = sum(((g - g.mean()) ** 2).sum() for g in groups) / (count - many)
    between = sum(len(g) * (g.mean() - missed.mean()) ** 2 for g in groups) / (many - 1)
    size = (count - sum(len(g) ** 2 for g in groups) / count) / (many - 1)
    return float((between - within) / (between + (size - 1) * within))


def table() -> str:
    """The table as Markdown."""
    groups: dict[tuple[str, str, str, str], list[int]] = {}
    for k, t in enumerate(trials()):
        groups.setdefault((t.one, t.two, t.design, t.pattern), []).append(k)
    lines = [
        "# Published trials, and what the engine predicts of them",
        "",
        "Written by `python -m tests.oracles.trials`; assumptions in `trials.py`, figures in",
        "`data/intercrop_trials.csv` (from Paut et al. 2024, Scientific Data 11:5, CC BY 4.0).",
        "Partial ratios of the first and second crop, and the total; predicted, observed (median; total with",
        "least–most), and the mean absolute error of the total. The papers state neither distances nor",
        "dates, so that all treatments of one design and pattern get one prediction.",
        "",
        "| pair | design | pattern | n | predicted | total | observed | total | error |",
        "|---|---|---|---|---|---|---|---|---|",
        *(_line(key, rows) for key, rows in sorted(groups.items())),
        "",
        "| trials | n | rank, partial | rank, total | error, partial | error, total |",
        "|---|---|---|---|---|---|",
        *(
            f"| {name} | {s.count} | {s.rank_partial:.2f} | {s.rank_total:.2f} | {s.error_partial:.3f} "
            f"(guess {s.guess_partial:.3f}) | {s.error_total:.3f} (guess {s.guess_total:.3f}) |"
            for name, s in scores()
        ),
        "",
        "Guess: every ratio is the median of all. A crude model with equal densities was given for",
        "orientation: ranks 0.36 and 0.24, errors 0.21 and 0.29. Treatments of one design and pattern get",
        "one prediction, and differ among themselves: were every group told by its own median, the errors",
        f"would still be {_floor(groups)}.",
        "",
        _held(),
        "",
        _misses(groups),
        "",
        "Other assumptions that were tried while the model was written, over all trials:",
        "",
        "| assumed | rank, partial | rank, total | error, partial | error, total |",
        "|---|---|---|---|---|",
        *(_alternative(name, assumed) for name, assumed in TRIED),
        "",
        *NOTES.read_text(encoding="utf-8").splitlines(),
        "",
    ]
    return "\n".join(lines)


DESIGNS = {"Additive": "additive", "Replacement": "replacement", "": "design not stated"}
TRIED = (
    ("as above", AS_STATED),
    ("replacements by usual distances", Assumed(by_distance=True)),
    ("added crop at 0.3 of its number", Assumed(second=0.3)),
    ("added crop at 0.7", Assumed(second=0.7)),
    ("added crop at its full number", Assumed(second=1.0)),
    ("3 °C warmer", Assumed(warmer_c=6.0)),
    ("6 °C warmer", Assumed(warmer_c=9.0)),
)


def _alternative(name: str, assumed: Assumed) -> str:
    s = score(assumed=assumed)
    ranks, errors = (s.rank_partial, s.rank_total), (s.error_partial, s.error_total)
    return " | ".join([f"| {name}", *(f"{r:.2f}" for r in ranks), *(f"{e:.3f}" for e in errors)]) + " |"


def _floor(groups: dict[tuple[str, str, str, str], list[int]]) -> str:
    """Errors of predictions that tell each group of treatments by its own median."""
    best = np.zeros_like(observed())
    for rows in groups.values():
        best[rows] = np.median(observed()[rows], axis=0)
    total = np.abs(best.sum(axis=1) - observed().sum(axis=1)).mean()
    return f"{np.abs(best - observed()).mean():.3f} and {total:.3f}"


def _held() -> str:
    even, odd = within_band()
    return (
        f"The range shown for a partial ratio, {BAND[0]:.2f} to {BAND[1]:.2f} times the prediction, is meant "
        f"to hold eight of ten: it holds {even:.0%} of those of even articles, from which it was taken and "
        f"widened as for one more article, and {odd:.0%} of the others."
    )


def scores() -> list[tuple[str, Score]]:
    """Scores of all trials, of either half of the articles and of each design, by name."""
    by_design = [(name, score(np.array([t.design == d for t in trials()]))) for d, name in DESIGNS.items()]
    half = first_half()
    return [("all", score()), ("even articles", score(half)), ("odd articles", score(~half)), *by_design]


def _line(key: tuple[str, str, str, str], rows: list[int]) -> str:
    one, two, design, pattern = key
    p, o = predicted()[rows], observed()[rows]
    total = o.sum(axis=1)
    around = f" ({total.min():.2f}–{total.max():.2f})" if len(rows) > 1 else ""
    cells = [
        f"{one} – {two}", design.lower() or "–", pattern.lower() or "–", str(len(rows)),
        f"{p[0, 0]:.2f} + {p[0, 1]:.2f}", f"{p[0].sum():.2f}",
        f"{np.median(o[:, 0]):.2f} + {np.median(o[:, 1]):.2f}", f"{np.median(total):.2f}{around}",
        f"{np.abs(p.sum(axis=1) - total).mean():.2f}",
    ]  # fmt: skip
    return f"| {' | '.join(cells)} |"


def _misses(groups: dict[tuple[str, str, str, str], list[int]]) -> str:
    off = {
        f"{k[0]} – {k[1]} ({k[2].lower() or 'design not stated'})": error
        for k, rows in groups.items()
        if (error := float(np.median(observed()[rows].sum(axis=1)) - predicted()[rows].sum(axis=1)[0])) ** 2
        > 0.3**2
    }
    told = "; ".join(f"{name} {error:+.2f}" for name, error in sorted(off.items(), key=lambda x: x[1]))
    return (
        f"Missed by more than 0.3 in the total (observed less predicted): {told}. What stands out is "
        "unknown to the engine: peas that gave next to nothing beside pepper, strips that neither lost nor "
        "gained, crops that gave more beside each other than alone."
    )


if __name__ == "__main__":
    TABLE.write_text(table(), encoding="utf-8")
