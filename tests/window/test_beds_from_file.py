"""Beds from a map or a drawing: previewed with their sizes, ticked, scaled by a typed width, one step."""

import json

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent
from PySide6.QtWidgets import QDialogButtonBox

from gardencanvas.app import beds_from_file
from gardencanvas.app.beds_from_file import BedsDialog
from gardencanvas.app.session import Session
from gardencanvas.files.outlines.reading import read_outlines
from gardencanvas.garden.places import bed_ground
from tests.garden.makers import bed, garden, site

CHECKED, UNCHECKED = Qt.CheckState.Checked, Qt.CheckState.Unchecked
SVG = """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 50">
<rect id="Herbs" width="20" height="10"/><rect id="Roots" x="60" width="40" height="10"/>
<path id="Knot" d="M0 20L40 50L40 20L0 50z"/></svg>"""


@pytest.fixture
def drawing(tmp_path):
    path = tmp_path / "plot.svg"
    path.write_text(SVG)
    return path


@pytest.fixture
def map_(tmp_path):
    ring = [[0, 0], [6, 0], [6, 2], [0, 2], [0, 0]]
    path = tmp_path / "plot.geojson"
    path.write_text(json.dumps({"type": "Polygon", "coordinates": [ring]}))
    return path


@pytest.fixture
def main(open_window):
    return open_window(Session(garden(beds=(bed("bed-1"),))))


@pytest.fixture
def opened(main, qtbot):
    def make(path):
        dialog = BedsDialog(main, path.name, read_outlines(path))
        qtbot.addWidget(dialog)
        dialog.refresh()
        dialog.show()
        return dialog

    return make


def ok(dialog):
    return dialog.buttons.button(QDialogButtonBox.StandardButton.Ok)


def test_a_drawing_is_scaled_by_the_typed_width_and_drawn_in_one_step(main, opened, drawing):
    dialog = opened(drawing)
    dialog.width_.setText("5 m")
    dialog.refresh()
    rows = [dialog.list.topLevelItem(i) for i in range(3)]
    assert [r.text(0) for r in rows] == ["Herbs", "Roots", "Knot"]
    assert rows[0].text(1).startswith("1.00 × 0.50")  # 20 of 100 units, of which 5 m
    assert rows[2].text(1) == "crosses itself"
    assert rows[2].checkState(0) is UNCHECKED
    # seen on the plan before anything is drawn
    assert len(main.session.garden.layouts[0].beds) == 1
    assert sum(1 for part in main.view.plan.parts.values() if part.value.name in {"Herbs", "Roots"}) == 2
    dialog.accept()
    beds = main.session.layout.beds
    assert [b.name for b in beds[1:]] == ["Herbs", "Roots"]
    assert bed_ground(beds[2]).area == pytest.approx(2.0 * 0.5)
    # right of what is there: the first bed reaches to 3.6 m
    assert min(x for b in beds[1:] for x, _ in b.outline) == pytest.approx(4.6)
    assert main.session.selection == {b.id for b in beds[1:]}
    main.session.history.undo()
    assert len(main.session.layout.beds) == 1


def test_what_is_unticked_stays_out_also_when_the_width_changes(main, opened, drawing):
    dialog = opened(drawing)
    dialog.list.topLevelItem(0).setCheckState(0, UNCHECKED)
    dialog.width_.setText("20'")
    dialog.width_.setText("20 m")
    dialog.refresh()
    assert dialog.list.topLevelItem(0).checkState(0) is UNCHECKED
    dialog.accept()
    assert [b.name for b in main.session.layout.beds[1:]] == ["Roots"]


def test_nothing_ticked_and_no_length_are_told_and_draw_nothing(main, opened, drawing):
    dialog = opened(drawing)
    dialog.width_.setText("wide")
    dialog.refresh()
    assert "no length" in dialog.message.text()
    assert not ok(dialog).isEnabled()
    dialog.width_.setText("10")
    for row in range(2):
        dialog.list.topLevelItem(row).setCheckState(0, UNCHECKED)
    dialog.refresh()
    assert "Nothing is ticked" in dialog.message.text()
    dialog.reject()
    assert len(main.session.layout.beds) == 1
    assert set(main.view.plan.parts) == {"bed-1"}


def test_a_map_in_metres_is_known_by_its_reach_and_turned_as_the_plan(open_window, qtbot, map_):
    main = open_window(Session(garden(site=site(bearing_deg=90.0))))
    dialog = BedsDialog(main, map_.name, read_outlines(map_))
    qtbot.addWidget(dialog)
    dialog.refresh()
    # as degrees it would reach 660 km
    assert dialog.numbers.currentData() == "metres"
    dialog.accept()
    outline = main.session.layout.beds[-1].outline
    xs, ys = zip(*outline, strict=True)
    # east is up: 6 m to the east run up the plan
    assert (max(xs) - min(xs), max(ys) - min(ys)) == pytest.approx((2.0, 6.0))
    assert main.session.layout.beds[-1].name == "Bed 2"


def test_the_wrong_meaning_of_numbers_is_told(main, opened, map_):
    dialog = opened(map_)
    dialog.numbers.setCurrentIndex(dialog.numbers.findData("degrees"))
    dialog.refresh()
    assert "reach" in dialog.message.text()
    assert not ok(dialog).isEnabled()
    dialog.reject()


def test_a_refused_file_is_told_in_the_status_bar(main, tmp_path, qtbot):
    path = tmp_path / "bomb.svg"
    path.write_text("<!DOCTYPE svg [<!ENTITY a 'b'>]><svg>&a;</svg>")
    with qtbot.waitSignal(main.session.refused) as said:
        beds_from_file.show(main, path)
    assert "entities" in said.args[0]


@pytest.mark.parametrize("which", ["drawing", "map_"])
def test_a_dropped_file_is_shown(main, which, request, monkeypatch, qtbot):
    path = request.getfixturevalue(which)
    shown = []
    monkeypatch.setattr(beds_from_file, "show", lambda window, found: shown.append((window, found)))
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    main.dropEvent(
        QDropEvent(
            QPointF(300, 300),
            Qt.DropAction.CopyAction,
            data,
            Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.NoModifier,
        )
    )
    qtbot.waitUntil(lambda: bool(shown))
    assert shown == [(main, path)]


def test_markup_in_a_name_is_shown_as_it_stands(main, opened, tmp_path):
    path = tmp_path / "plot.svg"
    path.write_text(SVG.replace('id="Herbs"', 'id="&lt;img src=x&gt;"'))
    dialog = opened(path)
    assert dialog.list.topLevelItem(0).text(0) == "<img src=x>"
    dialog.reject()
