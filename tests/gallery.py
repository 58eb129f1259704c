"""Writes a PNG of every main state of the window to tests/gallery/: run it, then look at them.

    python tests/gallery.py [--language CODE | --pseudo] [--size 1024x700] [NAME ...]

``--language de`` shows the German window, ``--pseudo`` one of accented, 40 % longer texts in brackets.

``QT_SCALE_FACTOR=2 python tests/gallery.py`` shows them at 200 %; ``--font 2`` with the system's font
at 200 %.
"""

import argparse
import json
import os
import sys
import tempfile
from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import TypeVar
from unittest.mock import patch

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
# pictures of a new user's window, whoever runs this
os.environ["XDG_CONFIG_HOME"] = tempfile.mkdtemp(prefix="gardencanvas-gallery-")
os.environ["XDG_DATA_HOME"] = tempfile.mkdtemp(prefix="gardencanvas-gallery-")
sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from PySide6.QtCore import QEvent, QEventLoop, QPoint, QPointF, QRectF, Qt, QTimer
from PySide6.QtGui import QColor, QFont, QImage, QMouseEvent, QPainter, QPen
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMessageBox, QWidget

from gardencanvas.app import filing, language, theme
from gardencanvas.app.background.reading import written
from gardencanvas.app.beds_from_file import BedsDialog
from gardencanvas.app.comparing.dialog import ComparisonDialog
from gardencanvas.app.comparing.layouts_dialog import LayoutsDialog
from gardencanvas.app.comparing.plans_dialog import PlansDialog
from gardencanvas.app.crop_page import CropPage
from gardencanvas.app.fill.asking import open_dialog
from gardencanvas.app.fill.dialog import FillDialog
from gardencanvas.app.finding import find_command, find_on_plan
from gardencanvas.app.own_form.variety_form import VarietyForm
from gardencanvas.app.printing.bedmap_dialog import BedMapDialog
from gardencanvas.app.printing.dialog import PrintDialog
from gardencanvas.app.printing.picture_dialog import PictureDialog
from gardencanvas.app.printing.strip_dialog import StripDialog
from gardencanvas.app.session import Session
from gardencanvas.app.shelf import Shelf
from gardencanvas.app.start import application, demo_garden, new_garden
from gardencanvas.app.window import MainWindow
from gardencanvas.canvas.hidden import Hidden
from gardencanvas.crops.model import Variety
from gardencanvas.crops.tin import SeedLot
from gardencanvas.files import garden_to_bytes, save_garden
from gardencanvas.files.keeping.journals import Head, write_journal
from gardencanvas.files.keeping.sittings import Holder, Sitting
from gardencanvas.files.keeping.versions import keep_version
from gardencanvas.files.outlines.reading import read_outlines
from gardencanvas.files.stamps import Change
from gardencanvas.garden import edits, layouts, outlines, sorts
from gardencanvas.garden.backdrop import Backdrop
from gardencanvas.garden.ground import Bed
from gardencanvas.garden.sorts import Sort
from gardencanvas.garden.volunteers import came_up
from tests import pseudo_locale
from tests.reading_windows import clipped, names_in, untranslated

OUT = Path(__file__).resolve().parent / "gallery"
Made = TypeVar("Made", bound=QWidget)
SHOWN: dict[str, Callable[[], QWidget]] = {}
SIZE: list[int] = []
"""Width and height of all main windows where one size was asked for."""


def state(make: Callable[[], Made]) -> Callable[[], Made]:
    """Register a state of the window, or of a dialog over it, under its function's name."""
    SHOWN[make.__name__] = make
    return make


def settle(milliseconds: int = 250) -> None:
    """Let timers and repaints run."""
    loop = QEventLoop()
    QTimer.singleShot(milliseconds, loop.quit)
    loop.exec()


def window(session: Session, width: int = 1440, height: int = 900, *, dark: bool = False) -> MainWindow:
    """A shown window of that size, or of the one asked for."""
    main = MainWindow(session)
    main.dark = dark
    main.apply_look()
    main.resize(*(SIZE or (width, height)))
    main.show()
    settle(50)
    main.view.fit()
    settle()
    return main


def _select(main: MainWindow, *ids: str) -> MainWindow:
    main.session.select(ids)
    settle()
    return main


def _carry(main: MainWindow, crop: str, x_m: float, y_m: float, mode: str = "rows") -> MainWindow:
    main.view.carry(crop, None, mode)
    at = main.view.mapFromScene(QPointF(100 * x_m, 100 * y_m))
    main.view.carry_move(main.view.viewport().mapToGlobal(at))
    settle()
    return main


@state
def empty_garden() -> MainWindow:
    return window(Session(new_garden(2027)))


@state
def demo() -> MainWindow:
    return window(Session(demo_garden()))


@state
def drag_that_clashes() -> MainWindow:
    return _carry(window(Session(demo_garden())), "cabbage", 1.3, 0.6)


@state
def drag_that_shares() -> MainWindow:
    return _carry(window(Session(demo_garden())), "lettuce", 0.5, 2.3, "single")


@state
def drag_outside() -> MainWindow:
    return _carry(window(Session(demo_garden())), "leek", 11.8, 0.8)


@state
def between_the_rows() -> MainWindow:
    main = _carry(window(Session(demo_garden())), "radish", 1.3, 0.6, "between")
    settle(2500)
    return main


@state
def command_search() -> QWidget:
    main = window(Session(demo_garden()))
    dialog = find_command(main)
    dialog.field.setText("mirror")
    dialog.show()
    settle()
    return dialog


@state
def find_on_the_plan() -> QWidget:
    main = window(Session(demo_garden()), dark=True)
    dialog = find_on_plan(main)
    dialog.field.setText("bean")
    dialog.show()
    settle()
    return dialog


@state
def single_plants() -> MainWindow:
    main = window(Session(demo_garden()))
    leek = next(p for p in main.session.layout.plantings if p.crop == "leek")
    main.session.select([leek.id])
    main.view.set_tool("stations")
    settle()
    return main


@state
def moved_with_distances() -> MainWindow:
    main = window(Session(demo_garden()))
    leek = next(p for p in main.session.layout.plantings if p.crop == "leek")
    x, y = leek.stations[0]
    view, port = main.view, main.view.viewport()
    at = view.mapFromScene(QPointF(100 * x, 100 * y))
    for kind, step in (
        (QEvent.Type.MouseButtonPress, 0),
        (QEvent.Type.MouseMove, 8),
        (QEvent.Type.MouseMove, 30),
    ):
        place = at + QPoint(step, -step)
        event = QMouseEvent(
            kind, QPointF(place), QPointF(port.mapToGlobal(place)), Qt.MouseButton.LeftButton,
            Qt.MouseButton.LeftButton, Qt.KeyboardModifier.ControlModifier,
        )  # fmt: skip
        QApplication.sendEvent(port, event)
        settle(60)
    return main


@state
def jobs_by_week() -> MainWindow:
    main = window(Session(demo_garden()))
    main.show_tab("jobs")
    settle(600)
    return main


@state
def seeds_to_order() -> MainWindow:
    main = window(Session(demo_garden()), dark=True)
    main.show_tab("seeds")
    settle(600)
    return main


@state
def jobs_as_pages() -> QWidget:
    main = window(Session(demo_garden()))
    dialog = PrintDialog(main, "Jobs", main.show_tab("jobs").document)
    dialog.show()
    settle(800)
    return dialog


def _bed_map(width: int, height: int, *, dark: bool = False) -> BedMapDialog:
    main = window(Session(demo_garden()), dark=dark)
    dialog = BedMapDialog(main)
    dialog.resize(width, height)
    dialog.show()
    settle(600)
    return dialog


@state
def bed_map_before_printing() -> QWidget:
    dialog = _bed_map(1100, 720)
    dialog.view.turn_to(4)
    settle(300)
    return dialog


@state
def bed_map_stages_dark() -> QWidget:
    dialog = _bed_map(1024, 700, dark=True)
    for row in (4, 6, 9):
        dialog.stages.item(row).setCheckState(Qt.CheckState.Checked)
    settle(400)
    dialog.view.turn_to(2)
    settle(300)
    return dialog


@state
def bed_map_of_many_sheets() -> QWidget:
    dialog = _bed_map(1024, 700)
    dialog.drawn.setCurrentIndex(1)
    dialog.scale.setCurrentIndex(1)
    settle(400)
    dialog.view.turn_to(2)
    dialog.view.zoom_to(1.5)
    settle(300)
    return dialog


@state
def planting_strip_before_printing() -> QWidget:
    main = window(Session(demo_garden()))
    dialog = StripDialog(main, main.session.layout.plantings[0])
    dialog.show()
    settle(600)
    return dialog


@state
def picture_to_save() -> QWidget:
    dialog = PictureDialog(window(Session(demo_garden())))
    dialog.show()
    settle(300)
    return dialog


@state
def what_fits() -> MainWindow:
    main = window(Session(demo_garden()))
    panel = main.show_tab("gaps")
    settle(500)
    panel.ask_place((5.0, 4.6))
    while panel.search.busy:
        settle(50)
    panel.list.setCurrentRow(0)
    settle(400)
    return main


@state
def open_ground() -> MainWindow:
    main = window(Session(demo_garden()), 1024, 700, dark=True)
    main.show_tab("gaps")
    settle(800)
    return main


def _two_layouts() -> MainWindow:
    main = window(Session(demo_garden()))
    garden, copy = layouts.duplicated(main.session.garden, main.session.layout_id, "With fewer lettuces")
    lettuce = next(p for p in garden.layout(copy).plantings if p.crop == "lettuce")
    main.session.propose(edits.remove(garden, copy, [lettuce.id]), "Try out")
    settle()
    return main


@state
def comparison_table() -> QWidget:
    dialog = ComparisonDialog(_two_layouts())
    dialog.show()
    settle(1500)
    return dialog


@state
def comparison_by_week() -> QWidget:
    dialog = ComparisonDialog(_two_layouts())
    dialog.tabs.setCurrentIndex(1)
    dialog.show()
    settle(1500)
    return dialog


def _two_plans() -> PlansDialog:
    dialog = PlansDialog(_two_layouts())
    dialog.show()
    settle(900)
    return dialog


@state
def two_plans() -> QWidget:
    return _two_plans()


@state
def two_plans_swiped() -> QWidget:
    dialog = _two_plans()
    dialog.over.setChecked(True)
    dialog.plans.slider.setValue(350)
    settle(900)
    return dialog


@state
def dragged_across() -> QWidget:
    """A planting held over the other plan, in a window of 1280 × 800."""
    main = window(Session(demo_garden()), 1280, 800)
    garden, _ = layouts.with_empty(main.session.garden, "From scratch", 2027, main.session.layout_id)
    main.session.propose(garden, "Try out")
    dialog = PlansDialog(main)
    dialog.resize(1240, 700)
    dialog.show()
    settle(600)
    source, target = dialog.views
    at = source.mapFromScene(100 * QPointF(*main.session.layout.by_id["p-leek"].stations[0]))
    to = source.viewport().mapFromGlobal(target.viewport().mapToGlobal(target.mapFromScene(QPointF(250, 80))))
    QTest.mousePress(source.viewport(), Qt.MouseButton.LeftButton, pos=at)
    for step in (0.1, 0.5, 1.0):
        QTest.mouseMove(source.viewport(), at + (to - at) * step)
        settle(60)
    settle(600)
    return dialog


@state
def layouts_listed() -> QWidget:
    dialog = LayoutsDialog(_two_layouts())
    dialog.show()
    settle()
    return dialog


@state
def one_selected() -> MainWindow:
    return _select(window(Session(demo_garden())), "p-kohlrabi")


@state
def many_selected() -> MainWindow:
    return _select(window(Session(demo_garden())), "p-leek", "p-celery", "p-carrot", "p-parsley")


@state
def bed_selected() -> MainWindow:
    return _select(window(Session(demo_garden())), "bed-2")


@state
def strained_bed() -> MainWindow:
    main = window(Session(demo_garden()))
    main.view.zoom_to({"bed-4"})
    return _select(main, "p-lettuce-late")


@state
def findings_list() -> MainWindow:
    main = window(Session(demo_garden()))
    main.bottom.setCurrentWidget(main.findings)
    main.findings.go_next()
    settle(1500)
    return main


@state
def finding_lived_with() -> MainWindow:
    main = window(Session(demo_garden()), 1024, 700, dark=True)
    main.bottom.setCurrentWidget(main.findings)
    main.findings.go_next()
    main.findings.detail.note.setText("I know: they come out a week later")
    main.findings.detail.note.returnPressed.emit()
    settle(1500)
    return main


@state
def outline() -> MainWindow:
    main = window(Session(demo_garden()))
    main.left.setCurrentWidget(main.outline)
    return _select(main, "p-tomato")


@state
def search_in_the_tin() -> MainWindow:
    main = window(Session(demo_garden()))
    main.tin.search.setText("bean")
    settle()
    return main


@state
def dark_theme() -> MainWindow:
    return _select(window(Session(demo_garden()), dark=True), "p-squash")


@state
def small_window() -> MainWindow:
    return _select(window(Session(demo_garden()), 1024, 700), "p-leek")


@state
def large_window() -> MainWindow:
    return window(Session(demo_garden()), 2560, 1440)


@state
def long_names() -> MainWindow:
    from gardencanvas.garden.edits import change

    session = Session(demo_garden())
    name = '<img src="x"> The bed behind the shed where the old man used to grow his prize marrows & leeks'
    session.propose(change(session.garden, session.layout_id, "bed-2", name=name), "Rename bed")
    return _select(window(session), "bed-2")


@state
def imperial_units() -> MainWindow:
    main = window(Session(demo_garden()))
    main.units = "imperial"
    main.apply_look()
    return _select(main, "p-leek")


@state
def succession_previewed() -> MainWindow:
    main = _select(window(Session(demo_garden())), "p-spinach")
    main.actions_.all["again"].trigger()
    settle()
    return main


@state
def succession_dialog() -> QWidget:
    from gardencanvas.app.succession_dialog import SuccessionDialog

    dialog = succession_previewed().findChild(SuccessionDialog)
    assert isinstance(dialog, SuccessionDialog)
    return dialog


def _filling(main: MainWindow, crop: str, number: int) -> FillDialog:
    """A bed of the demo garden about to be filled."""
    bed = main.session.layout.beds[number]
    dialog = open_dialog(main, (crop, None), bed)
    while dialog.answer is None:
        settle(50)
    settle()
    return dialog


@state
def fill_previewed() -> MainWindow:
    main = window(Session(demo_garden()))
    _filling(main, "lettuce", 3)
    return main


@state
def fill_dialog() -> QWidget:
    return _filling(window(Session(demo_garden())), "lettuce", 3)


@state
def fill_dialog_dark() -> QWidget:
    return _filling(window(Session(demo_garden()), dark=True, width=1024, height=700), "cabbage", 0)


def _came_up(main: MainWindow) -> MainWindow:
    """Calendula that came up in the wedge, and onions in clumps of four."""
    session = main.session
    wedge = session.layout.by_id["p-calendula"]
    came = edits.rebuilt(wedge, start=came_up(wedge.start.on))
    clumps = edits.rebuilt(session.layout.by_id["p-leek"], per_station=4)
    session.propose(edits.replace(session.garden, session.layout_id, [came, clumps]), "Came up")
    return main


@state
def volunteer_selected() -> MainWindow:
    return _select(_came_up(window(Session(demo_garden()))), "p-calendula")


@state
def volunteer_small_dark() -> MainWindow:
    return _select(_came_up(window(Session(demo_garden()), 1024, 700, dark=True)), "p-calendula")


@state
def exact_numbers() -> MainWindow:
    main = _select(_came_up(window(Session(demo_garden()), height=1300)), "p-leek")
    main.view.zoom_to({"p-leek"})
    bar = main.inspector.verticalScrollBar()
    bar.setValue(bar.maximum())
    settle()
    return main


@state
def fill_small_window() -> MainWindow:
    main = window(Session(demo_garden()), width=1024, height=700)
    _filling(main, "radish", 6)
    return main


def _own(*, dark: bool = False) -> MainWindow:
    """The demo garden beside an invented library: favourites, seed lots, a variety."""
    library = Shelf(Path(tempfile.mkdtemp(prefix="gardencanvas-gallery-")))
    for crop in ("leek", "carrot", "parsnip"):
        library.mark_favourite(crop, on=True)
    library.put_lot(SeedLot(id="carrot-2026", crop="carrot", grams=5, year=2026))
    library.put_lot(SeedLot(id="parsnip-2022", crop="parsnip", seeds=150, year=2022, note="half a packet"))
    library.put_variety(Variety(id="carrot-from-the-fair", crop="carrot", name="from the seed fair"))
    return window(Session(demo_garden(), library=library), dark=dark)


def _page(crop: str, variety: str | None = None, *, dark: bool = False) -> CropPage:
    desk = _own(dark=dark).tin.desk
    desk.show_page(crop, variety)
    settle()
    assert desk.page is not None
    return desk.page


@state
def crop_page() -> QWidget:
    return _page("climbing-bean")


@state
def crop_page_of_a_variety() -> QWidget:
    return _page("cabbage", "cabbage-small-early")


@state
def crop_page_dark() -> QWidget:
    return _page("rhubarb", dark=True)


@state
def crop_page_narrow() -> QWidget:
    page = _page("parsnip")
    page.resize(400, 700)
    settle()
    return page


@state
def variety_form() -> QWidget:
    desk = _own().tin.desk
    desk.new_variety("leek")
    assert isinstance(desk.form, VarietyForm)
    desk.form.name.setText("short and stout")
    for box, text in zip(desk.form.grids[0].ranges["height_m"].boxes, ("50", "40", ""), strict=True):
        box.setText(text)
    settle()
    return desk.form


@state
def crop_form() -> QWidget:
    desk = _own().tin.desk
    desk.new_crop("climbing-bean")
    settle()
    assert desk.form is not None
    return desk.form


@state
def lot_form() -> QWidget:
    main = _own()
    main.tin.desk.change_lot(main.session.library.own.lots[1])
    settle()
    assert main.tin.desk.form is not None
    return main.tin.desk.form


@state
def tin_filters() -> MainWindow:
    main = _own()
    main.tin.filters.more.click()
    main.tin.filters.boxes["layer"].setCurrentIndex(2)
    settle()
    return main


@state
def tin_favourites_unfolded() -> MainWindow:
    main = _own()
    main.tin.filters.switches["favourites"].click()
    main.tin.fold("carrot", True)
    settle()
    return main


@state
def tin_what_fits() -> MainWindow:
    main = _select(_own(), "bed-2")
    main.tin.filters.switches["fits"].click()
    settle(1500)
    return main


@state
def tin_narrow_dark() -> MainWindow:
    main = _own(dark=True)
    main.across.setSizes([190, 900, 320])
    main.tin.filters.switches["now"].click()
    settle(3000)
    return main


@state
def site_dialog() -> QWidget:
    from gardencanvas.app.site_dialog import SiteDialog

    main = window(Session(demo_garden()))
    dialog = SiteDialog(main.session.garden.site, main)
    dialog.show()
    settle()
    return dialog


def _worked_on(main: MainWindow, folder: Path) -> Path:
    """A saved demo garden of which a window that died had moved and removed something."""
    path = folder / "kitchen garden.gardencanvas"
    garden = demo_garden()
    layout = garden.layouts[0]
    save_garden(garden, path)
    keep_version(
        path, garden_to_bytes(edits.remove(garden, layout.id, ["p-leek"])), datetime(2026, 11, 2, 17, 3)
    )
    keep_version(path, garden_to_bytes(garden), datetime(2026, 11, 9, 9, 41))
    worked = edits.shift(edits.remove(garden, layout.id, ["p-kohlrabi"]), layout.id, ["p-carrot"], 0.1, 0.0)
    sitting = Sitting(path)
    sitting.begin()
    head = Head(path, garden.name, None, datetime(2026, 11, 10, 18, 22).astimezone())
    write_journal(sitting.journal, head, garden_to_bytes(worked))
    sitting.abandon()
    return path


def _recovery(*, dark: bool = False) -> QWidget:
    from gardencanvas.app.recovery_dialog import RecoveryDialog, found_work

    main = window(Session(demo_garden()), dark=dark)
    _worked_on(main, Path(tempfile.mkdtemp()))
    dialog = RecoveryDialog(main, found_work())
    dialog.show()
    settle()
    return dialog


@state
def recovery_dialog() -> QWidget:
    return _recovery()


@state
def recovery_dialog_dark() -> QWidget:
    return _recovery(dark=True)


def _versions(*, dark: bool = False) -> QWidget:
    from gardencanvas.app.versions_dialog import VersionsDialog

    main = window(Session(demo_garden()), dark=dark)
    main.set_session(Session.opened(_worked_on(main, Path(tempfile.mkdtemp()))))
    dialog = VersionsDialog(main)
    dialog.show()
    dialog.list.setCurrentRow(1)
    settle(600)
    return dialog


@state
def versions_dialog() -> QWidget:
    return _versions()


@state
def versions_dialog_dark() -> QWidget:
    return _versions(dark=True)


@state
def read_only_small() -> MainWindow:
    path = _worked_on(window(Session(demo_garden())), Path(tempfile.mkdtemp()))
    other = Sitting(path)
    other.claim()
    with patch.object(filing.asking, "ask_held", lambda *_: "read"):
        main = window(Session.opened(path), 1024, 700)
    main.session.propose(edits.remove(main.session.garden, "layout-1", ["p-leek"]), "Remove")
    settle(1500)
    return main


def _asked(ask: Callable[[MainWindow], object]) -> QWidget:
    """A question as it stands on the screen, without waiting for its answer."""
    main = window(Session(demo_garden()))
    asked: list[QMessageBox] = []
    with (
        patch.object(QMessageBox, "exec", lambda box: asked.append(box) or 0),
        patch.object(QMessageBox, "deleteLater", lambda _box: None),
    ):
        ask(main)
    asked[0].show()
    settle()
    return asked[0]


@state
def changed_on_disk() -> QWidget:
    name = "kitchen garden.gardencanvas"
    return _asked(lambda main: filing.asking.ask_changed(main, name, Change.CHANGED, unsaved=True))


@state
def open_elsewhere() -> QWidget:
    holder = Holder(4711, datetime(2026, 11, 10, 17, 3).astimezone())
    return _asked(lambda main: filing.asking.ask_held(main, "kitchen garden.gardencanvas", holder))


def _partly_shown(width: int, height: int, *, dark: bool = False) -> MainWindow:
    main = window(Session(demo_garden()), width, height, dark=dark)
    main.left.setCurrentWidget(main.outline)
    session = main.session
    beds = [bed.id for bed in session.layout.beds]
    session.propose(sorts.locked(session.garden, session.layout_id, beds[:3], on=True), "Lock")
    fixtures = frozenset({Sort.FIXTURES})
    session.hide(Hidden(fixtures, frozenset({session.layout.plantings[2].id, beds[4]})))
    settle()
    return main


@state
def hidden_and_locked() -> MainWindow:
    return _partly_shown(1440, 900)


@state
def hidden_and_locked_small_dark() -> MainWindow:
    return _partly_shown(1024, 700, dark=True)


def _survey() -> QImage:
    """A sketched survey of an invented plot on squared paper, as a grower might scan one."""
    sheet = QImage(1500, 1050, QImage.Format.Format_RGB32)
    sheet.fill(QColor("#FFFDF4"))
    painter = QPainter(sheet)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(QColor("#BFD6E4"), 1))
    for n in range(0, 1500, 25):
        painter.drawLine(n, 0, n, 1050)
        painter.drawLine(0, n, 1500, n)
    painter.setPen(QPen(QColor("#2B3A55"), 5))
    painter.setFont(QFont(painter.font().family(), 26))
    for x, y, w, h, text in (
        (120, 110, 560, 150, "bed A"), (120, 330, 560, 150, "bed B"), (800, 110, 220, 370, "bed C"),
        (120, 700, 900, 60, "wall"),
    ):  # fmt: skip
        painter.drawRect(x, y, w, h)
        painter.drawText(x + 20, y + h // 2 + 10, text)
    painter.drawEllipse(1120, 600, 260, 260)
    painter.drawText(1200, 740, "pear")
    painter.setPen(QPen(QColor("#A8320A"), 3))
    painter.drawLine(120, 560, 680, 560)
    painter.drawText(340, 610, "5.60 m")
    painter.end()
    return sheet


def _over_a_survey(**fields: object) -> Session:
    """The first beds of a new garden, drawn over a scanned survey."""
    start = new_garden(2027)
    under = edits.made(
        Backdrop, name="survey of the plot", picture=written(_survey()), centre=(6.3, 4.15),
        metres_per_pixel=0.01, **fields,
    )  # fmt: skip
    layout_id = start.layouts[0].id
    beds = [
        edits.made(Bed, id="bed-a", name="Bed A", outline=outlines.rectangle((0.0, 0.0), 5.6, 1.5)),
        edits.made(Bed, id="bed-b", name="Bed B", outline=outlines.rectangle((0.0, 2.2), 5.6, 1.5)),
    ]
    return Session(edits.rebuilt(edits.add(start, layout_id, beds), backdrop=under))


@state
def background_picture() -> MainWindow:
    main = window(_over_a_survey(locked=True))
    main.view.show_box(QRectF(-120, -110, 1500, 1050))
    settle()
    return main


@state
def background_dark_small() -> MainWindow:
    main = window(_over_a_survey(angle_deg=4.0), 1024, 700, dark=True)
    main.view.show_box(QRectF(-120, -110, 1500, 1050))
    main.background.work("backdrop")
    settle()
    return main


@state
def background_scaled() -> MainWindow:
    main = window(_over_a_survey())
    main.view.show_box(QRectF(-120, -110, 1500, 1050))
    main.activateWindow()
    main.background.work("backdrop scale")
    settle()
    for x, y in ((0.0, 4.5), (5.6, 4.5)):
        at = main.view.mapFromScene(QPointF(100 * x, 100 * y))
        QTest.mouseClick(main.view.viewport(), Qt.MouseButton.LeftButton, pos=at)
    QTest.keyClicks(main.view, "5.60 m")
    settle()
    return main


_ALLOTMENT = """<svg xmlns="http://www.w3.org/2000/svg" width="210mm" height="148mm" viewBox="0 0 210 148">
<rect id="Nursery" x="10" y="10" width="60" height="24" rx="3"/>
<rect id="Roots" x="10" y="44" width="60" height="24"/>
<path id="Kidney" d="M90 20c20-20 60-10 50 20s-30 10-40 30-40-20-10-50z"/>
<path id="Keyhole" fill-rule="evenodd"
 d="M30 110a24 24 0 1 1 48 0a24 24 0 1 1-48 0zM46 110a8 8 0 1 1 16 0a8 8 0 1 1-16 0z"/>
<path id="Bow tie" d="M110 90l40 40v-40l-40 40z"/>
<path d="M160 20l10 90"/><text x="5" y="5">plot</text></svg>"""


def _beds_from(name: str, text: str, main: MainWindow) -> QWidget:
    path = Path(tempfile.mkdtemp(prefix="gardencanvas-gallery-")) / name
    path.write_text(text)
    dialog = BedsDialog(main, name, read_outlines(path))
    dialog.refresh()
    dialog.show()
    settle()
    return dialog


@state
def beds_from_a_drawing() -> QWidget:
    return _beds_from("allotment.svg", _ALLOTMENT, window(Session(demo_garden())))


@state
def beds_from_a_drawing_on_the_plan() -> MainWindow:
    main = window(Session(demo_garden()))
    main.held = _beds_from("allotment.svg", _ALLOTMENT, main)
    main.held.hide()
    settle()
    return main


@state
def beds_from_a_map_dark() -> QWidget:
    ring = [[5.0, 52.0], [5.0001, 52.00002], [5.00009, 52.00006], [4.99998, 52.00005], [5.0, 52.0]]
    features = [
        {
            "type": "Feature",
            "properties": {"name": name},
            "geometry": {"type": "Polygon", "coordinates": [[[x + by, y] for x, y in ring]]},
        }
        for name, by in (("East border", 0.0), ("West border", -0.00015))
    ]
    text = json.dumps({"type": "FeatureCollection", "features": features})
    return _beds_from("plot.geojson", text, window(Session(new_garden(2027)), 1024, 700, dark=True))


@state
def fault_dialog() -> QWidget:
    from gardencanvas.app.faults import Faults

    main = window(Session(demo_garden()))
    safe = "Your work is safe: it was just written to this computer, also what is not saved yet."
    box = Faults(main).box("RuntimeError: an example", "Traceback (most recent call last): …", safe)
    box.show()
    settle()
    return box


def main(arguments: list[str]) -> None:
    """Write the pictures named, or all."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--language", default="en")
    parser.add_argument("--pseudo", action="store_true")
    parser.add_argument("--size")
    parser.add_argument("--font", type=float, default=1.0, help="times the system's font size")
    parser.add_argument("names", nargs="*")
    asked = parser.parse_args(arguments)
    app = application()
    font = app.font()
    font.setPointSizeF(asked.font * font.pointSizeF())
    app.setFont(font)
    language.install(app, asked.language)
    if asked.pseudo:
        pseudo_locale.install(app)
    SIZE[:] = [int(side) for side in asked.size.split("x")] if asked.size else []
    spoken = "pseudo" if asked.pseudo else "" if asked.language == "en" else asked.language
    folder = OUT / "-".join(part for part in (spoken, asked.size) if part)
    folder.mkdir(exist_ok=True, parents=True)
    for name in asked.names or list(SHOWN):
        shown = SHOWN[name]()
        for _ in range(8):  # slow machines lay out late
            if clipped(shown):
                settle()
        shown.grab().save(str(folder / f"{name}.png"))
        if asked.pseudo:
            garden = (
                shown if isinstance(shown, MainWindow) else shown.parentWidget().window()
            ).session.garden
            for fault in (*untranslated(shown, names_in(garden)), *(f"clipped {c}" for c in clipped(shown))):
                print(f"  {fault}")  # noqa: T201
        under = shown if isinstance(shown, MainWindow) else shown.parentWidget().window()
        under.session.history.set_clean()
        under.close()
        under.deleteLater()
        QApplication.processEvents()
        print(name)  # noqa: T201 - a script that says what it did
    theme.apply(app, dark=False)


if __name__ == "__main__":
    main(sys.argv[1:])
