"""Exact numbers of beds and of what stands on the plan: typed, one step each, refused with a reason."""

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from shapely import Polygon

from gardencanvas.app.inspector.bed_fields import BedFields
from gardencanvas.app.inspector.thing_fields import ThingFields
from gardencanvas.app.session import Session
from gardencanvas.garden import outlines
from gardencanvas.garden.edits import add
from gardencanvas.garden.ground import Cover, Fixture, LineSupport, Path, RingSupport
from gardencanvas.words.plain import Measure
from tests.garden.makers import bed, garden

pytestmark = pytest.mark.gui

HOLE = ((1.0, 0.4), (1.4, 0.4), (1.4, 0.8))


class Shown:
    """Fields of one thing on a session of its own; they follow after each entry."""

    def __init__(self, qtbot, item, *, as_bed=False) -> None:
        value = garden(beds=(item,)) if as_bed else add(garden(beds=(bed(),)), "l1", [item])
        self.session = Session(value)
        self.said: list[str] = []
        self.session.refused.connect(self.said.append)
        self.id = item.id
        self.fields = BedFields(self.session) if as_bed else ThingFields(self.session)
        self._show = self.fields.show_bed if as_bed else self.fields.show_thing
        qtbot.addWidget(self.fields)
        self.refresh()
        self.fields.show()

    @property
    def now(self):
        return self.session.garden.find("l1", self.id)

    def refresh(self) -> None:
        self._show(self.now, Measure())

    def put(self, field, text) -> None:
        field.setFocus()
        field.selectAll()
        QTest.keyClicks(field, text)
        QTest.keyClick(field, Qt.Key.Key_Return)
        self.refresh()


def test_a_bed_s_sides_soil_height_and_notes(qtbot):
    shown = Shown(qtbot, bed(holes=(HOLE,)), as_bed=True)
    fields = shown.fields
    shown.put(fields.length, "400")
    shown.put(fields.width_, "100")
    assert Polygon(shown.now.outline).area == pytest.approx(4.0)
    assert Polygon(shown.now.holes[0]).area == pytest.approx(0.08 * 400 / 360 * 100 / 120, abs=1e-6)
    shown.put(fields.soil, "45")
    shown.put(fields.raised, "20")
    assert (shown.now.soil_depth_m, shown.now.raised_m) == (0.45, 0.2)
    shown.put(fields.soil, "0")
    assert shown.now.soil_depth_m is None
    shown.put(fields.path, "from the north")
    shown.put(fields.edge, "larch boards")
    shown.put(fields.name, "Sunny one")
    assert (shown.now.path_note, shown.now.edge_note, shown.now.name) == (
        "from the north", "larch boards", "Sunny one",
    )  # fmt: skip
    assert shown.session.history.count() == 8
    fields.holes.click()
    shown.refresh()
    assert shown.now.holes == ()
    assert not fields.holes.isEnabled()
    assert fields.holes.toolTip().startswith("It has none")
    shown.session.history.undo()
    assert len(shown.now.holes) == 1


def test_a_round_bed_has_a_diameter_and_any_other_its_box(qtbot):
    shown = Shown(qtbot, bed(outline=outlines.circle((2.0, 2.0), 0.8)), as_bed=True)
    assert shown.fields.width_ is None
    assert shown.fields.length.value() == pytest.approx(160.0)
    shown.put(shown.fields.length, "200")
    away = [((x - 2) ** 2 + (y - 2) ** 2) ** 0.5 for x, y in shown.now.outline]
    assert away == pytest.approx([1.0] * len(away), abs=1e-5)
    keyhole = Shown(qtbot, bed(outline=outlines.keyhole((0.0, 0.0), 1.0, 0.3, 0.3)), as_bed=True)
    area = Polygon(keyhole.now.outline).area
    keyhole.put(keyhole.fields.width_, str(2 * keyhole.fields.width_.value()))
    assert Polygon(keyhole.now.outline).area == pytest.approx(2 * area, rel=1e-3)


def test_a_name_that_is_empty_is_refused(qtbot):
    shown = Shown(qtbot, bed(), as_bed=True)
    shown.put(shown.fields.name, " ")
    assert shown.said
    assert shown.now.name == "bed-1"


THINGS = [
    (Path(id="t", line=((5, 0), (5, 3))), "lengths", "width_m", "55", 0.55),
    (
        Fixture(id="t", name="Tree", kind="tree", outline=outlines.circle((9, 9), 2), height_m=5, base_m=1),
        "lengths", "base_m", "180", 1.8,
    ),
    (
        Fixture(id="t", name="Fence", kind="fence", outline=outlines.rectangle((9, 9), 2, 0.1), height_m=2),
        "counts", "clear_share", "30", 0.3,
    ),
    (
        RingSupport(id="t", kind="cane ring", name="Canes", centre=(1, 1), radius_m=0.4, height_m=2),
        "lengths", "radius_m", "55", 0.55,
    ),
    (
        LineSupport(id="t", kind="cane row", name="Canes", begin=(0, 0), end=(2, 0), height_m=2),
        "counts", "canes", "9", 9,
    ),
    (
        Cover(id="t", kind="fleece", name="Fleece", outline=outlines.rectangle((0, 0), 2, 1), height_m=0.5),
        "lengths", "height_m", "70", 0.7,
    ),
]  # fmt: skip


@pytest.mark.parametrize(("item", "where", "field", "typed", "value"), THINGS)
def test_each_thing_has_its_numbers(qtbot, item, where, field, typed, value):
    shown = Shown(qtbot, item)
    shown.put(getattr(shown.fields, where)[field], typed)
    assert getattr(shown.now, field) == pytest.approx(value)
    shown.put(shown.fields.name, "Another")
    assert shown.now.name == "Another"
    assert shown.session.history.steps[-1].startswith("Change")


def test_a_row_of_canes_has_its_length_and_a_cover_its_days(qtbot):
    row = LineSupport(id="t", kind="cane row", name="Canes", begin=(0, 0), end=(2, 0), height_m=2)
    shown = Shown(qtbot, row)
    shown.put(shown.fields.lengths["length"], "250")
    assert (shown.now.begin, shown.now.end) == ((0.0, 0.0), (2.5, 0.0))
    cover = Cover(id="t", kind="mesh", name="Mesh", outline=outlines.rectangle((0, 0), 2, 1), height_m=0.5)
    shown = Shown(qtbot, cover)
    first = shown.fields.days["first"]
    first.own.click()
    assert shown.now.first == date(2027, 1, 1)
    shown.refresh()
    first.own.click()
    assert shown.now.first is None


def test_what_is_not_allowed_is_told(qtbot):
    tree = Fixture(id="t", name="Tree", kind="tree", outline=outlines.circle((9, 9), 2), height_m=5, base_m=1)
    shown = Shown(qtbot, tree)
    shown.put(shown.fields.lengths["base_m"], "600")
    assert "must lie below the top" in shown.said[-1]
    assert shown.now.base_m == 1
