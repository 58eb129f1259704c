"""Contrast of every pair of colours that meet, by coloraide (an independent library), against WCAG 2.2 AA.

1.4.3: text 4.5:1 (3:1 where it is large: 24 px, or 18.7 px bold); 1.4.11: what is needed to see a control
or to understand a drawing 3:1; 2.4.13 asks 3:1 of a focus ring.
"""

import re

import pytest
from coloraide import Color

from gardencanvas.app.theme import sheet
from gardencanvas.canvas.palette import DARK, LIGHT, palette

both = pytest.mark.parametrize("c", [LIGHT, DARK], ids=["light", "dark"])
TEXT, GRAPHIC = 4.5, 3.0


def contrast(a: str, b: str) -> float:
    return Color(a).contrast(b, method="wcag21")


def below(pairs, least):
    """Pairs that miss what is asked, with what they reach."""
    return {name: round(contrast(a, b), 2) for name, (a, b) in pairs.items() if contrast(a, b) < least}


def test_the_library_gives_the_values_of_the_standard():
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)  # WCAG 2.2, definition of contrast ratio
    assert contrast("#767676", "#ffffff") >= TEXT > contrast("#777777", "#ffffff")  # WebAIM


@both
def test_text(c):
    grounds = {
        "ink": ("paper", "panel", "field", "desk", "selected", "frost", "soil", "path", "sky", "soil_deep"),
        "quiet": ("paper", "panel", "field", "desk", "selected", "frost", "soil", "path", "sky"),
        "accent": ("paper", "panel", "field"),
        "chrome_ink": ("chrome", "chrome_hover"),
        "note_ink": ("note",),
        "note_quiet": ("note",),
        "panel": ("accent", "ink"),  # selected text; the date on its flag
    }
    pairs = {f"{t} on {g}": (getattr(c, t), getattr(c, g)) for t, some in grounds.items() for g in some}
    for number, verdict in enumerate(c.verdicts):
        pairs[f"pill {number}"] = (c.panel, verdict)
        for ground in ("paper", "panel", "field") if number >= 2 else ():  # warnings and faults in words
            pairs[f"verdict {number} on {ground}"] = (verdict, getattr(c, ground))
    assert below(pairs, TEXT) == {}


@both
def test_lines_and_shapes_that_carry_meaning(c):
    pairs = {}
    for number, verdict in enumerate(c.verdicts):
        for ground in ("paper", "soil", "panel", "path", "selected"):
            pairs[f"verdict {number} on {ground}"] = (verdict, getattr(c, ground))
        pairs[f"dot {number} on the cursor's plate"] = (palette(not c.dark).verdicts[number], c.note)
    for shape in ("bed_edge", "path_edge", "wall", "timber", "support", "cover"):
        pairs[f"{shape} on paper"] = (getattr(c, shape), c.paper)
    for shape in ("support", "cover", "bed_edge"):
        pairs[f"{shape} on soil"] = (getattr(c, shape), c.soil)
    pairs["bed_edge on path"] = (c.bed_edge, c.path)
    assert below(pairs, GRAPHIC) == {}


@both
def test_controls_and_the_focus_ring(c):
    pairs = {f"border on {g}": (c.border, getattr(c, g)) for g in ("paper", "panel", "field")}
    for ground in ("paper", "panel", "field", "desk", "soil", "selected"):
        pairs[f"focus on {ground}"] = (c.accent, getattr(c, ground))
    assert below(pairs, GRAPHIC) == {}


RULE = re.compile(r"([^{}]+)\{([^{}]*)\}")


@both
def test_every_rule_of_the_style_sheet_that_names_text_and_ground(c):
    """What the sheet itself says is read out of it, so that a new rule is tested too."""
    pairs = {}
    for selector, body in RULE.findall(sheet(c, 10.0)):
        said = dict(re.findall(r"(?<![-\w])(color|background): (#\w{6})", body))
        said |= dict(re.findall(r"(selection-color|selection-background-color): (#\w{6})", body))
        if {"color", "background"} <= said.keys() and ":disabled" not in selector:
            pairs[selector.strip()] = (said["color"], said["background"])
        if {"selection-color", "selection-background-color"} <= said.keys():
            pairs[f"{selector.strip()} selected"] = (
                said["selection-color"],
                said["selection-background-color"],
            )
    assert len(pairs) > 12, "the sheet was read"
    assert below(pairs, TEXT) == {}


@both
def test_what_takes_the_focus_shows_it(c):
    """Each kind of control that the sheet draws has a rule for the focus, in the colour of the ring."""
    text = sheet(c, 10.0)
    rings = [s for s, body in RULE.findall(text) if ":focus" in s and c.accent in body]
    for kind in ("QLineEdit", "QAbstractSpinBox", "QComboBox", "QPushButton", "QToolButton", "QTreeView",
                 "QListView", "QTableView", "QTabBar::tab"):  # fmt: skip
        assert any(f"{kind}:focus" in s for s in rings), kind
