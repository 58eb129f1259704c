"""Codes of the trade as the grower reads them: a word each, in the language shown."""

from gardencanvas.crops.interactions import Effect
from gardencanvas.crops.model import Group, Habit, Harvest, Layer, Start
from gardencanvas.fit.report import Kind, Verdict
from gardencanvas.garden.differing import Differs
from gardencanvas.words.language import mark, say

_VERDICTS = {
    Verdict.CLEAR: mark("clear"),
    Verdict.SHARES: mark("shares"),
    Verdict.STRAINS: mark("strains"),
    Verdict.CLASHES: mark("clashes"),
}
_LAYERS = {
    Layer.GROUND: mark("ground cover"),
    Layer.LOW: mark("low"),
    Layer.MIDDLE: mark("middle"),
    Layer.TALL: mark("tall"),
    Layer.CLIMBING: mark("climbing"),
}
_HABITS = {
    Habit.ROSETTE: mark("rosette"),
    Habit.HEAD: mark("head"),
    Habit.UPRIGHT: mark("upright"),
    Habit.BUSH: mark("bush"),
    Habit.FEATHERY: mark("feathery"),
    Habit.CLIMBER: mark("climber"),
    Habit.SPRAWLER: mark("sprawler"),
    Habit.TUFT: mark("tuft"),
    Habit.CARPET: mark("carpet"),
    Habit.SPIRE: mark("spire"),
    Habit.SHRUB: mark("shrub"),
    Habit.BLADE: mark("blade"),
}
_GROUPS = {
    Group.FRUITING: mark("fruiting vegetable"),
    Group.LEAF: mark("leaf vegetable"),
    Group.BRASSICA: mark("brassica"),
    Group.ROOT: mark("root and tuber"),
    Group.ALLIUM: mark("allium"),
    Group.LEGUME: mark("legume"),
    Group.PERENNIAL: mark("perennial vegetable"),
    Group.GRAIN: mark("grain"),
    Group.HERB: mark("herb"),
    Group.FLOWER: mark("flower"),
    Group.SOFT_FRUIT: mark("soft fruit"),
    Group.GREEN_MANURE: mark("green manure"),
}
_STARTS = {
    Start.SOWN: mark("sown in place"),
    Start.RAISED: mark("raised, planted out"),
    Start.SET: mark("set in place"),
}
_HARVESTS = {
    Harvest.SINGLE: mark("once, the plant goes"),
    Harvest.REPEATED: mark("picked over"),
    Harvest.CUT_AGAIN: mark("cut and come again"),
    Harvest.NONE: mark("none"),
}
_KINDS = {
    Kind.CROWDING: mark("crowding"),
    Kind.SHADING: mark("shading"),
    Kind.ROOTS: mark("roots"),
    Kind.FAMILY: mark("family"),
    Kind.WATER: mark("water"),
    Kind.TIMING: mark("timing"),
    Kind.FROST: mark("frost"),
    Kind.ROTATION: mark("rotation"),
    Kind.SUPPORT: mark("support"),
    Kind.COVER: mark("cover"),
    Kind.OUTSIDE: mark("outside"),
}
_ROOTS = {
    "shallow": mark("shallow roots"),
    "medium": mark("medium roots"),
    "deep": mark("deep roots"),
}
_EFFECTS = {
    Effect.FEWER_PESTS: mark("fewer pests"),
    Effect.MORE_PESTS: mark("more pests"),
    Effect.FEWER_WEEDS: mark("fewer weeds"),
    Effect.MORE_HELPERS: mark("more helpers"),
    Effect.COMPETITION: mark("competition"),
    Effect.ALLELOPATHY: mark("allelopathy"),
    Effect.SHARED_DISEASE: mark("shared disease"),
    Effect.SHARED_PEST: mark("shared pest"),
    Effect.SUPPORT: mark("support"),
    Effect.HARVEST_DISTURBS: mark("harvest disturbs"),
    Effect.YIELD_GAIN: mark("yield gain"),
    Effect.YIELD_LOSS: mark("yield loss"),
    Effect.NO_EFFECT: mark("no effect"),
}
_DIFFERS = {
    Differs.ONLY_HERE: mark("only here"),
    Differs.MOVED: mark("moved"),
    Differs.RETIMED: mark("re-timed"),
    Differs.OTHERWISE: mark("changed"),
}
_EVIDENCE = {
    "several trials": mark("several trials"),
    "one trial": mark("one trial"),
    "common practice": mark("common practice"),
    "tradition only": mark("tradition only"),
}
_TOPICS = {
    "pollination": mark("pollination"),
    "pests": mark("pests"),
    "disease": mark("disease"),
    "use": mark("use"),
    "growing": mark("growing"),
}
_FROST_DAYS = {
    "known": mark("known"),
    "past years": mark("past years"),
    "estimated": mark("estimated"),
    "none": mark("none"),
}
_LIVES = {"annual": mark("annual"), "biennial": mark("biennial"), "perennial": mark("perennial")}
_CLASSES = {
    "rooting": {"shallow": mark("shallow"), "medium": mark("medium"), "deep": mark("deep")},
    "frost": {
        "tender": mark("tender"),
        "half-hardy": mark("half-hardy"),
        "hardy": mark("hardy"),
        "very hardy": mark("very hardy"),
    },
    "light": {
        "full sun": mark("full sun"),
        "partial sun": mark("partial sun"),
        "partial shade": mark("partial shade"),
        "shade": mark("shade"),
    },
    "water": {"low": mark("low"), "medium": mark("medium"), "high": mark("high")},
    "nutrients": {
        "low": mark("low"),
        "medium": mark("medium"),
        "high": mark("high"),
        "fixing": mark("fixing"),
    },
    "support": {
        "none": mark("none"),
        "stake": mark("stake"),
        "cane": mark("cane"),
        "net": mark("net"),
        "trellis": mark("trellis"),
    },
}


def verdict(one: Verdict) -> str:
    """``shares``; in files and for programs it is ``Verdict.word``."""
    return say(_VERDICTS[one])


def layer(one: Layer) -> str:
    """``ground cover``."""
    return say(_LAYERS[one])


def habit(one: Habit) -> str:
    """``rosette``."""
    return say(_HABITS[one])


def group(one: Group) -> str:
    """``leaf vegetable``."""
    return say(_GROUPS[one])


def start(one: Start) -> str:
    """A way to start a crop: ``sown in place``."""
    return say(_STARTS[one])


def harvest(one: Harvest) -> str:
    """What a harvest leaves behind: ``picked over``."""
    return say(_HARVESTS[one])


def kind(of_finding: Kind) -> str:
    """What a finding is about: ``crowding``."""
    return say(_KINDS[of_finding])


def roots(rooting: str) -> str:
    """``shallow roots``."""
    return say(_ROOTS[rooting]) if rooting in _ROOTS else shipped(rooting)


def effect(one: Effect) -> str:
    """``fewer pests``."""
    return say(_EFFECTS[one])


def differs(one: Differs) -> str:
    """``only here``."""
    return say(_DIFFERS[one])


def evidence(grade: str) -> str:
    """``one trial``."""
    return say(_EVIDENCE[grade])


def topic(of_remark: str) -> str:
    """What a remark is about: ``pollination``."""
    return say(_TOPICS[of_remark])


def frost_days(basis: str) -> str:
    """What a place's frost days rest on: ``past years``."""
    return say(_FROST_DAYS[basis])


def life(code: str) -> str:
    """How long a crop lives: ``annual``."""
    return say(_LIVES[code])


def fact(field: str, value: str) -> str:
    """A class that a crop is put into: ``water`` ``high``; what is free text is said through ``shipped``."""
    return say(_CLASSES[field][value]) if value in _CLASSES.get(field, {}) else shipped(value)


def shipped(text: str) -> str:
    """A text of the shipped data in the language shown, where that language has it; else as it is.

    What the grower wrote comes back as it is too.
    """
    return say(text) if text else ""
