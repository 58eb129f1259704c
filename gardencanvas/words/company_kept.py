"""Sentences for neighbours: what trials say of them, and what pests and diseases they share."""

from gardencanvas.crops.interactions import Interaction, interactions
from gardencanvas.words.language import figure, mark, say, say_many
from gardencanvas.words.named import effect, shipped
from gardencanvas.words.told import Told

_TRIED = {
    "several trials": mark("{who} beside {others} in trials: {said}."),
    "one trial": mark("{who} beside {others} in a trial: {said}."),
    "common practice": mark("{who} beside {others} in common practice: {said}."),
}
_TRIED_SO_MUCH = {
    "several trials": mark("{who} beside {others} in trials: {said} ({comparisons}, {papers})."),
    "one trial": mark("{who} beside {others} in a trial: {said} ({comparisons}, {papers})."),
    "common practice": mark("{who} beside {others} in common practice: {said} ({comparisons}, {papers})."),
}


def trials(t: Told) -> str:
    """What trials report of two crops side by side; pests without any number."""
    gain, cost, life, foes = (_found(t, key) for key in ("gain", "cost", "life", "foes"))
    said = []
    if gain is not None:
        said.append(_gain(t, gain))
    if cost is not None:
        said.append(_cost(t, cost))
    if life is not None:
        said.append(_life(t, life))
    if foes is not None and len(said) < 2:
        said.append(say("both are hosts of {foes}", foes=shipped(foes.what)))
    return _tried(t, "; ".join(said))


def same_family(t: Told) -> str:
    """Neighbours of one family that share pests or diseases."""
    foes = _found(t, "foes")
    return say(
        "{who} and {others} are both of the {family} and share its troubles: {troubles}.",
        who=t.who,
        others=t.others,
        family=shipped(t.families.get(t.text("family")) or t.text("family")),
        troubles=shipped(foes.what if foes is not None else t.text("why")),
    )


def _found(t: Told, key: str) -> Interaction | None:
    wanted = t.finding.numbers.get(key)
    return next((i for i in interactions() if i.id == wanted), None) if wanted else None


def _gain(t: Told, gain: Interaction) -> str:
    if "mid" not in t.finding.numbers:
        return say("a gain, {what}", what=shipped(gain.what))
    low, mid, high = (figure(t.number(key), ".2f") for key in ("low", "mid", "high"))
    if low == high:
        return say("together they yield as much as {ratio} times the ground with each alone", ratio=mid)
    return say(
        "together they yield as much as {ratio} times ({low}–{high}) the ground with each alone",
        ratio=mid,
        low=low,
        high=high,
    )


def _cost(t: Told, cost: Interaction) -> str:
    what = shipped(cost.what)
    if "disputed" in t.finding.numbers:
        return say("{who} loses by it: {what}, though not in other trials", who=t.who, what=what)
    return say("{who} loses by it: {what}", who=t.who, what=what)


def _life(t: Told, life: Interaction) -> str:
    """What it does to pests and helpers; for whom, unless it is both."""
    whom = t.finding.numbers.get("life_for")
    name, what = effect(life.effect), shipped(life.what)
    if not whom:
        return say("{effect}: {what}", effect=name, what=what)
    who = t.names[t.finding.plantings.index(str(whom))]
    return say("{effect} for {who}: {what}", effect=name, who=who, what=what)


def _tried(t: Told, said: str) -> str:
    """With how much it was tried, where that is known."""
    grade, numbers = t.text("evidence"), t.finding.numbers
    if "observations" not in numbers or "papers" not in numbers:
        return say(_TRIED[grade], who=t.who, others=t.others, said=said)
    comparisons = say_many("{n} comparison", "{n} comparisons", t.count("observations"))
    papers = say_many("{n} paper", "{n} papers", t.count("papers"))
    return say(
        _TRIED_SO_MUCH[grade], who=t.who, others=t.others, said=said, comparisons=comparisons, papers=papers
    )
