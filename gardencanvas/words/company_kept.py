"""Sentences for neighbours: what trials say of them, and what pests and diseases they share."""

from gardencanvas.crops.interactions import Interaction, interactions
from gardencanvas.words.plain import counted
from gardencanvas.words.told import Told

_TRIALS = {"several trials": "trials", "one trial": "a trial"}


def trials(t: Told) -> str:
    """What trials report of two crops side by side; pests without any number."""
    gain, cost, life, foes = (_said(t, key) for key in ("gain", "cost", "life", "foes"))
    where = _TRIALS.get(t.text("evidence"), t.text("evidence"))
    said = []
    if gain is not None:
        said.append(_gain(t, gain))
    if cost is not None:
        but = ", though not in other trials" if "disputed" in t.finding.numbers else ""
        said.append(f"{t.who} loses by it: {cost.what}{but}")
    if life is not None:
        said.append(f"{life.effect.value}{_for(t)}: {life.what}")
    if foes is not None and len(said) < 2:
        said.append(f"both are hosts of {foes.what}")
    return f"{t.who} beside {t.others} in {where}: {'; '.join(said)}{_much(t)}."


def same_family(t: Told) -> str:
    """Neighbours of one family that share pests or diseases."""
    name = t.families.get(t.text("family")) or t.text("family")
    foes = _said(t, "foes")
    shared = foes.what if foes is not None else t.text("why")
    return f"{t.who} and {t.others} are both of the {name} and share its troubles: {shared}."


def _said(t: Told, key: str) -> Interaction | None:
    wanted = t.finding.numbers.get(key)
    return next((i for i in interactions() if i.id == wanted), None) if wanted else None


def _gain(t: Told, gain: Interaction) -> str:
    if "mid" not in t.finding.numbers:
        return f"a gain, {gain.what}"
    low, mid, high = (f"{t.number(key):.2f}" for key in ("low", "mid", "high"))
    span = "" if low == high else f" ({low}–{high})"
    return f"together they yield as much as {mid} times{span} the ground with each alone"


def _for(t: Told) -> str:
    """Whom it does good, unless it is both."""
    whom = t.finding.numbers.get("life_for")
    return f" for {t.names[t.finding.plantings.index(str(whom))]}" if whom else ""


def _much(t: Told) -> str:
    numbers = t.finding.numbers
    if "observations" in numbers and "papers" in numbers:
        papers = counted(t.count("papers"), "paper", "papers")
        return f" ({counted(t.count('observations'), 'comparison', 'comparisons')}, {papers})"
    return ""
