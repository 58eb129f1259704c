"""Every number of a crop that the window shows can name its source: all crops, walked off screen.

The inspector, the crop page and the seed tin's tooltips are shown for each crop; each label with a digit in
it must tell a source whose title stands in sources.toml.
"""

import re
from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

from gardencanvas.app.crop_page import CropPage
from gardencanvas.app.inspector.panel import Inspector
from gardencanvas.app.labels import ValueTable
from gardencanvas.app.seed_tin import SeedTin
from gardencanvas.app.session import Session
from gardencanvas.app.shelf import Shelf
from gardencanvas.canvas.palette import palette
from gardencanvas.crops.catalogue import catalogue
from gardencanvas.garden.garden import Layout
from gardencanvas.garden.pattern import Spots
from gardencanvas.garden.planting import Planting
from gardencanvas.season.usual_start import usual_start
from gardencanvas.words.plain import Measure
from tests.garden.makers import garden, site

pytestmark = pytest.mark.slow

TITLES = {s.title for s in catalogue().sources.values()}
COUNTED = {"Days to spare", "Plants"}  # what the engine counts on this plan rests on no single citation


@pytest.fixture(scope="module")
def everything():
    """A garden with one plant of every crop, far apart."""
    known = catalogue()
    plantings = []
    for number, crop in enumerate(known.crops):
        at = (10.0 * (number % 16), 10.0 * (number // 16))
        start = usual_start(site(), known.resolve(crop.id), 2027)
        plantings.append(Planting(id=crop.id, crop=crop.id, pattern=Spots(points=(at,)), start=start))
    layout = Layout(id="l1", name="All", year=2027, plantings=tuple(plantings))
    return garden(layouts=(layout,))


@pytest.fixture
def session(everything, tmp_path, qapp):
    made = Session(everything, library=Shelf(tmp_path))
    made.show_date(date(2027, 7, 1))
    return made


def unsourced(labels):
    """Labels with a number in them that do not name a citation."""
    return [
        (label.accessibleName() or label.text())
        for label in labels
        if re.search(r"\d", label.text())
        and not any(title in label.accessibleDescription() for title in TITLES)
    ]


def test_the_inspector(session, qtbot):
    inspector = Inspector(session)
    qtbot.addWidget(inspector)
    shown = 0
    for crop in catalogue().crops:
        session.select([crop.id])
        inspector.refresh()
        (table,) = inspector.planting.findChildren(ValueTable)
        values = [w for w in table.findChildren(QLabel) if w.property("role") == "value"]
        values = [w for w in values if w.accessibleName().partition(":")[0] not in COUNTED]
        assert unsourced(values) == [], crop.id
        shown += sum(bool(re.search(r"\d", w.text())) for w in values)
    assert shown >= 3 * len(catalogue().crops)


def test_the_crop_page(session, qtbot):
    page = CropPage(session)
    page.set_look(Measure(), palette(False))
    qtbot.addWidget(page)
    shown = 0
    for crop in catalogue().crops:
        page.shown = (crop.id, None)
        page.refresh()
        labels = page.scroll.widget().findChildren(QLabel)
        values = [w for w in labels if w.property("role") in ("value", "estimated")]
        assert unsourced(values) == [], crop.id
        shown += sum(bool(re.search(r"\d", w.text())) for w in values)
    assert shown > 20 * len(catalogue().crops)


def test_the_tooltips_of_the_seed_tin_show_no_number_but_those_of_hazards(session, qtbot):
    tin = SeedTin(session)
    qtbot.addWidget(tin)
    for crop in catalogue().crops:
        if catalogue().varieties_of(crop.id):
            tin.fold(crop.id, True)
    seen = 0
    for at in range(tin.model.rowCount()):
        index = tin.model.index(at, 0)
        crop = index.data(Qt.ItemDataRole.UserRole)
        if crop is None:
            continue
        seen += 1
        told = index.data(Qt.ItemDataRole.ToolTipRole)
        for hazard in crop.hazards:  # their source stands beside them on the crop page
            assert hazard.source in catalogue().sources
        plain = " ".join(told.split())
        for words in (w for h in crop.hazards for w in (h.hazard, h.caution)):
            plain = plain.replace(" ".join(words.split()), "")
        assert not re.search(r"\d", plain), told
    assert seen == len(catalogue().crops) + len(catalogue().varieties)
