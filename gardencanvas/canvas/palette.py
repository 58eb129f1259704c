"""Every colour of the plan, light and dark, in one place.

Verdict colours are darkened from the colour-blind-safe set of Okabe & Ito (2008) until they reach 3:1
against paper and soil (WCAG 2.2, 1.4.11); none of them is told apart by colour alone. Family tints are our
own choice: muted, and differing in lightness as well as hue.
"""

from colorsys import hls_to_rgb, rgb_to_hls
from dataclasses import dataclass
from functools import lru_cache
from zlib import crc32

from PySide6.QtGui import QColor

from gardencanvas.crops.model import Crop, Group, Habit
from gardencanvas.fit.report import Verdict


@dataclass(frozen=True, slots=True)
class Palette:
    """Colours by use, as ``#rrggbb``."""

    dark: bool
    paper: str
    panel: str
    ink: str
    quiet: str
    grid: str
    grid_strong: str
    soil: str
    soil_shade: str
    bed_edge: str
    path: str
    path_edge: str
    shadow: str
    wall: str
    timber: str
    hedge: str
    crown: str
    support: str
    cover: str
    accent: str
    note: str  # ground of the words at the cursor
    note_ink: str
    note_quiet: str
    verdicts: tuple[str, str, str, str]
    fruit_line: str
    # the window round the plan
    desk: str
    chrome: str
    chrome_ink: str
    chrome_hover: str
    line: str  # parts one area from another
    border: str  # of what can be pressed or typed in
    selected: str
    field: str
    frost: str
    sky: str
    soil_deep: str

    def verdict(self, verdict: Verdict) -> str:
        """Colour of a verdict's mark."""
        return self.verdicts[verdict]


LIGHT = Palette(
    dark=False,
    paper="#F6F3EA",
    panel="#FBFAF5",
    ink="#26302B",
    quiet="#5A6157",
    grid="#ECE8DA",
    grid_strong="#DFD9C7",
    soil="#E3D9C6",
    soil_shade="#D6C9B0",
    bed_edge="#7F7056",
    path="#EDE7D8",
    path_edge="#8F876F",
    shadow="#2B3340",
    wall="#9A8471",
    timber="#9B8567",
    hedge="#7C9468",
    crown="#8FA97B",
    support="#6E5A3F",
    cover="#5F7F93",
    accent="#0072B2",
    note="#26302B",
    note_ink="#F6F3EA",
    note_quiet="#CFD3C8",
    verdicts=("#3C4A43", "#0072B2", "#936000", "#9A2805"),
    fruit_line="#5B2A1C",
    desk="#E9E5D6",
    chrome="#2F3B35",
    chrome_ink="#F6F3EA",
    chrome_hover="#46544C",
    line="#CFC9B8",
    border="#8E8877",
    selected="#DFEAF1",
    field="#FFFEFA",
    frost="#E1E8EC",
    sky="#EAF0F3",
    soil_deep="#CDBB98",
)

DARK = Palette(
    dark=True,
    paper="#1E2421",
    panel="#262D29",
    ink="#E9E6DA",
    quiet="#A7AEA3",
    grid="#272E2A",
    grid_strong="#333C37",
    soil="#3A3329",
    soil_shade="#312B22",
    bed_edge="#A08E6E",
    path="#2A302B",
    path_edge="#7C857D",
    shadow="#000000",
    wall="#86766A",
    timber="#857558",
    hedge="#5C7350",
    crown="#5F7A57",
    support="#B79C74",
    cover="#6E8897",
    accent="#5CB3E8",
    note="#EDEADF",
    note_ink="#1E2421",
    note_quiet="#4D554F",
    verdicts=("#C9D2C8", "#62BAF0", "#E8A93A", "#FF8A55"),
    fruit_line="#2A120B",
    desk="#161B18",
    chrome="#121613",
    chrome_ink="#E9E6DA",
    chrome_hover="#2C3530",
    line="#465049",
    border="#7A847C",
    selected="#2B4150",
    field="#1E2421",
    frost="#2B353C",
    sky="#28323A",
    soil_deep="#4A3F30",
)


def palette(dark: bool) -> Palette:
    """The light or the dark set."""
    return DARK if dark else LIGHT


@dataclass(frozen=True, slots=True)
class Tint:
    """Colours that one crop's symbol is painted with: leaves from deep to light, and its accent."""

    deep: str
    shade: str
    leaf: str
    light: str
    accent: str
    stalk: str


# APG IV family -> leaf, accent (flower, fruit or stalk)
_FAMILIES: dict[str, tuple[str, str]] = {
    "Amaranthaceae": ("#8C4A5C", "#C2627A"),
    "Amaryllidaceae": ("#5E9A8B", "#B79CC9"),
    "Apiaceae": ("#6A9748", "#F1EEDC"),
    "Asparagaceae": ("#5C8D5E", "#C9544A"),
    "Asteraceae": ("#9AB650", "#E0B43C"),
    "Boraginaceae": ("#6F8F7C", "#5B78C4"),
    "Brassicaceae": ("#6B93A1", "#E4D06A"),
    "Caprifoliaceae": ("#A9C765", "#E9E6F2"),
    "Convolvulaceae": ("#7A8A5A", "#9A79B5"),
    "Cucurbitaceae": ("#83963F", "#E3A52F"),
    "Fabaceae": ("#57904F", "#E7E0EF"),
    "Grossulariaceae": ("#5F7D4A", "#8E2F45"),
    "Lamiaceae": ("#86A08C", "#8F7DC0"),
    "Linaceae": ("#8FA88A", "#7B9BD2"),
    "Malvaceae": ("#8A9C6C", "#C58BAE"),
    "Montiaceae": ("#8EB06A", "#F2EDE4"),
    "Papaveraceae": ("#8FA596", "#D5663F"),
    "Poaceae": ("#B79F45", "#E2C766"),
    "Polygonaceae": ("#6C8A4E", "#B8505A"),
    "Portulacaceae": ("#9CAF5C", "#E8C24A"),
    "Ranunculaceae": ("#86A07A", "#6E8AC9"),
    "Rosaceae": ("#4F7F4C", "#C43B3B"),
    "Solanaceae": ("#3F7353", "#C8452F"),
    "Tropaeolaceae": ("#84A866", "#D9772B"),
}
# Crops that look otherwise than their family: leaf, accent; None keeps the family's.
_CROPS: dict[str, tuple[str | None, str | None]] = {
    "agretti": ("#6FA06A", None),
    "basil": ("#62994C", None),
    "mint": ("#67A066", None),
    "aubergine": (None, "#4B2E5A"),
    "blackberry": (None, "#33263F"),
    "blackcurrant": (None, "#33263F"),
    "blueberry": (None, "#4A5A9A"),
    "butternut": (None, "#DDBB86"),
    "cape-gooseberry": (None, "#E3A23A"),
    "cauliflower": (None, "#F2EEDD"),
    "chard": ("#4E8A4C", "#C4405E"),
    "courgette": (None, "#4F7F3A"),
    "cranberry": (None, "#B0293B"),
    "cucumber": (None, "#4E7A3A"),
    "gherkin": (None, "#5F8A3E"),
    "good-king-henry": ("#6B9450", None),
    "gooseberry": (None, "#A8BB62"),
    "grape": (None, "#5B3A6B"),
    "jostaberry": (None, "#3A2740"),
    "lavender": (None, "#8A6CC0"),
    "lingonberry": (None, "#B0293B"),
    "loganberry": (None, "#8E2A45"),
    "melon": (None, "#D9C27A"),
    "okra": (None, "#7E9B4E"),
    "perpetual-spinach": ("#5B8F4C", None),
    "pumpkin": (None, "#E0812B"),
    "quinoa": ("#8FA25A", "#C98A4A"),
    "radicchio": ("#8A4254", None),
    "red-cabbage": ("#7A5E86", None),
    "redcurrant": (None, "#C3263A"),
    "romanesco": (None, "#B9C94E"),
    "spinach": ("#4F8747", None),
    "sweetcorn": ("#8FA548", "#E6C85A"),
    "tomatillo": (None, "#A9B85A"),
    "tree-spinach": ("#7F9A6B", "#B0488A"),
    "watermelon": (None, "#3F6B3A"),
    "whitecurrant": (None, "#EFE6C0"),
    "winter-squash": (None, "#D9963A"),
}
_CURDS = {"cauliflower", "romanesco"}
_SHOWING = {Group.FRUITING, Group.LEGUME, Group.SOFT_FRUIT, Group.FLOWER, Group.HERB}
_OTHERS = ("#7C9A5B", "#5F8A6A", "#94A65A", "#6E8F7E", "#8C9455")


def _shifted(colour: str, lightness: float, hue: float = 0.0, saturation: float = 1.0) -> str:
    """The colour with its lightness scaled towards black (<1) or white (>1)."""
    c = QColor(colour)
    h, light, s = rgb_to_hls(c.redF(), c.greenF(), c.blueF())
    light = light * lightness if lightness <= 1 else 1 - (1 - light) / lightness
    r, g, b = hls_to_rgb((h + hue) % 1.0, min(max(light, 0.0), 1.0), min(s * saturation, 1.0))
    return QColor.fromRgbF(r, g, b).name()


@lru_cache(maxsize=1024)
def tint_of(family: str, crop_id: str, dark: bool) -> Tint:
    """The crop's tint: its family's, shifted a little by the crop so that kin can be told apart."""
    stable = crc32(crop_id.encode())
    leaf, accent = _FAMILIES.get(family, (_OTHERS[crc32(family.encode()) % len(_OTHERS)], "#D8A94A"))
    own_leaf, own_accent = _CROPS.get(crop_id, (None, None))
    leaf, accent = own_leaf or leaf, own_accent or accent
    leaf = _shifted(leaf, 0.93 + 0.22 * (stable % 17) / 16, hue=((stable >> 8) % 9 - 4) / 360 * 2.5)
    if dark:
        leaf, accent = _shifted(leaf, 1.06, saturation=0.95), _shifted(accent, 0.95)
    return Tint(
        deep=_shifted(leaf, 0.48),
        shade=_shifted(leaf, 0.76),
        leaf=leaf,
        light=_shifted(leaf, 1.5),
        accent=accent,
        stalk=_shifted(leaf, 1.9, saturation=0.8),
    )


def shows_ripe(crop: Crop) -> bool:
    """Whether one sees from above that it is ripe or in flower: fruits, pods, curds, flowers."""
    if crop.id in _CURDS:
        return True
    if crop.habit in {Habit.SPIRE, Habit.TUFT, Habit.UPRIGHT}:
        return crop.group in {Group.FLOWER, Group.HERB}
    if crop.habit is Habit.SPRAWLER:
        return crop.group in {Group.FRUITING, Group.FLOWER}
    return crop.group in _SHOWING and crop.habit is not Habit.HEAD


def family_leaf(family: str) -> str:
    """The family's own leaf colour, before any crop's shift."""
    return _FAMILIES.get(family, (_OTHERS[crc32(family.encode()) % len(_OTHERS)], ""))[0]


def known_families() -> tuple[str, ...]:
    """Families with a tint of their own."""
    return tuple(_FAMILIES)
