"""The background picture: read, laid, scaled by two clicks, moved, turned, dimmed, locked, dropped."""

import struct
from math import hypot
from random import Random

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, QRectF, Qt, QUrl
from PySide6.QtGui import QColor, QDropEvent, QImage
from PySide6.QtTest import QTest

from gardencanvas.app.background import laying, reading
from gardencanvas.app.background.reading import PictureRefused, picture_of
from gardencanvas.app.printing.picture import Picture, save_picture
from gardencanvas.app.session import Session
from gardencanvas.canvas.picture import write_picture
from gardencanvas.files import garden_to_bytes
from gardencanvas.files.reading import garden_from_bytes
from gardencanvas.garden import laying_under
from gardencanvas.garden.picture import MAX_PICTURE_BYTES, MAX_SIDE_PX, said_size
from gardencanvas.words.plain import Measure
from tests.garden.makers import garden
from tests.garden.pictures import backdrop, png
from tests.window.hand import SHIFT, Hand

KEY = Qt.Key


def image(width, height, colour="#336699"):
    made = QImage(width, height, QImage.Format.Format_RGB32)
    made.fill(QColor(colour))
    return made


@pytest.fixture
def hand(qtbot):
    return Hand(qtbot, garden(backdrop=backdrop(400, 300, metres_per_pixel=0.01, centre=(2.0, 1.5))))


# reading


@pytest.mark.parametrize("suffix", ["png", "jpg", "bmp", "webp"])
def test_what_is_read_has_the_size_that_its_header_names(qapp, tmp_path, suffix):
    path = tmp_path / f"plot.{suffix}"
    assert image(120, 80).save(str(path))
    found = picture_of(path)
    assert said_size(found.content) == (found.kind, 120, 80)


def test_a_large_picture_is_made_smaller_and_keeps_its_proportions(qapp, tmp_path):
    path = tmp_path / "scan.png"
    assert image(6000, 1500).save(str(path))
    found = picture_of(path)
    assert (found.width_px, found.height_px) == (MAX_SIDE_PX, MAX_SIDE_PX // 4)


def test_noise_that_hardly_packs_is_made_small_enough_to_keep(qapp):
    noise = Random(1).randbytes(4 * 1600 * 1600)
    found = reading.written(QImage(noise, 1600, 1600, QImage.Format.Format_RGB32))
    assert len(found.content) <= MAX_PICTURE_BYTES
    assert found.kind == "jpeg"


def test_clear_parts_stay_clear(qapp, tmp_path):
    clear = QImage(20, 10, QImage.Format.Format_ARGB32)
    clear.fill(QColor(0, 0, 0, 0))
    path = tmp_path / "sketch.png"
    clear.save(str(path))
    found = picture_of(path)
    assert QImage.fromData(found.content).pixelColor(3, 3).alpha() == 0


def test_what_a_camera_notes_does_not_travel_along(qapp, tmp_path):
    """An EXIF block as a camera writes it (a UserComment would do): APP1, marker FFE1 of ITU-T T.81."""
    path = tmp_path / "photo.jpg"
    image(64, 48).save(str(path))
    plain = path.read_bytes()
    note = b"Exif\0\0" + b"II*\0\x08\0\0\0\0\0\0\0\0\0" + b"51.0000 N 3.0000 E"
    path.write_bytes(plain[:2] + b"\xff\xe1" + struct.pack(">H", len(note) + 2) + note + plain[2:])
    found = picture_of(path).content
    assert b"51.0000" not in found
    assert b"Exif" not in found


def test_a_photo_taken_upright_stands_upright(qapp, tmp_path):
    """EXIF 2.3, tag 0x0112: orientation 6 says that the first row is the right-hand side."""
    path = tmp_path / "photo.jpg"
    image(64, 48).save(str(path))
    plain = path.read_bytes()
    entry = struct.pack("<HHIHH", 0x0112, 3, 1, 6, 0)
    note = b"Exif\0\0" + b"II*\0" + struct.pack("<IH", 8, 1) + entry + bytes(4)
    path.write_bytes(plain[:2] + b"\xff\xe1" + struct.pack(">H", len(note) + 2) + note + plain[2:])
    found = picture_of(path)
    assert (found.width_px, found.height_px) == (48, 64)


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"", "no picture"),
        (b"II*\0\x08\0\0\0" + bytes(60), "no picture"),
        (b"GIF89a" + bytes(60), "no picture"),
        (b"<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>", "no picture"),
        (png(60_000, 60_000), "60000 × 60000 pixels"),
        (png(20_000, 5_001), "20000 × 5001 pixels"),
        (png(40, 30)[:60], "cannot be decoded"),
        (b"\xff\xd8\xff\xe0" + bytes(30), "does not say|cannot be decoded"),
    ],
    ids=["empty", "a TIFF", "an animation", "a drawing", "a bomb", "too large", "cut short", "half a header"],
)
def test_what_is_no_picture_or_a_bomb_is_refused_with_a_sentence(qapp, qtlog, tmp_path, content, said):
    path = tmp_path / "found.png"
    path.write_bytes(content)
    with qtlog.disabled(), pytest.raises(PictureRefused, match=said):
        picture_of(path)


def test_a_bomb_is_refused_before_it_is_decoded(qapp, tmp_path, monkeypatch):
    path = tmp_path / "bomb.png"
    path.write_bytes(png(60_000, 60_000))
    monkeypatch.setattr(reading.QImageReader, "read", lambda _self: pytest.fail("it was decoded"))
    with pytest.raises(PictureRefused):
        picture_of(path)


def test_a_folder_and_a_huge_file_are_refused(qapp, tmp_path, monkeypatch):
    with pytest.raises(PictureRefused, match="not a file"):
        picture_of(tmp_path)
    monkeypatch.setattr(reading, "MAX_FILE_BYTES", 10)
    path = tmp_path / "scan.bmp"
    path.write_bytes(bytes(11))
    with pytest.raises(PictureRefused, match="larger than"):
        picture_of(path)


# on the plan


def test_two_clicks_and_a_typed_distance_scale_it(hand):
    view = hand.view
    view.set_tool("backdrop scale")
    a, b = hand.pixel((0.5, 0.5)), hand.pixel((2.5, 1.5))
    hand.click(a)
    hand.click(b)
    hand.write("4.20 m")
    hand.key(KEY.Key_Return)
    under = hand.session.garden.backdrop
    first, second = (view.mapToScene(p) / 100 for p in (a, b))
    clicked = hypot(second.x() - first.x(), second.y() - first.y())
    # the pixels of the picture under the two clicks lie clicked / 0.01 apart, and stand for 4.20 m
    assert under.metres_per_pixel == pytest.approx(0.01 * 4.2 / clicked, rel=1e-9)
    assert under.locked
    assert view.tool is view.tools["select"]
    hand.session.history.undo()
    assert hand.session.garden.backdrop.metres_per_pixel == 0.01


@pytest.mark.parametrize(
    ("units", "typed", "metres"),
    [
        ("metric", "420 cm", 4.2),
        ("metric", "4,2", 4.2),
        ("imperial", "13' 9\"", 4.191),
        ("imperial", "10", 3.048),
    ],
)
def test_a_distance_is_typed_as_anywhere_else(hand, units, typed, metres):
    """13 feet 9 inches are 165 inches of 0.0254 m."""
    hand.view.set_units(units)
    hand.view.set_tool("backdrop scale")
    a, b = hand.pixel((0.5, 0.5)), hand.pixel((2.5, 0.5))
    hand.click(a)
    hand.click(b)
    hand.write(typed)
    hand.key(KEY.Key_Return)
    clicked = (hand.view.mapToScene(b) - hand.view.mapToScene(a)).x() / 100
    assert hand.session.garden.backdrop.metres_per_pixel == pytest.approx(0.01 * metres / clicked, rel=1e-9)


def test_a_distance_that_is_none_is_told_and_changes_nothing(hand):
    before = hand.session.garden
    hand.view.set_tool("backdrop scale")
    hand.click((0.5, 0.5))
    hand.key(KEY.Key_Return)
    hand.click((1.5, 0.5))
    hand.write("x'x")
    hand.key(KEY.Key_Return)
    assert "no length" in hand.said[-1]
    hand.key(KEY.Key_Escape)
    hand.key(KEY.Key_Escape)
    assert hand.session.garden is before
    assert hand.view.tool is hand.view.tools["select"]


def test_it_is_dragged_turned_and_nudged(hand):
    view = hand.view
    view.set_tool("backdrop")
    a, b = hand.pixel((2.0, 1.5)), hand.pixel((2.5, 1.0))
    hand.drag(a, b)
    by = (view.mapToScene(b) - view.mapToScene(a)) / 100
    under = hand.session.garden.backdrop
    assert under.centre == pytest.approx((2.0 + by.x(), 1.5 + by.y()), abs=1e-6)
    x, y = under.centre
    hand.key(KEY.Key_Right)
    hand.key(KEY.Key_Up, SHIFT)
    assert hand.session.garden.backdrop.centre == pytest.approx((x + 0.01, y - 0.1), abs=1e-9)
    hand.key(KEY.Key_R)
    assert hand.session.garden.backdrop.angle_deg == 1.0
    hand.key(KEY.Key_R, SHIFT)
    assert hand.session.garden.backdrop.angle_deg == 0.0


def test_a_corner_turns_it_about_its_middle(hand):
    hand.view.set_tool("backdrop")
    under = hand.session.garden.backdrop
    corner = under.corners[1]  # upper right: 2 m right of the middle and 1.5 m above
    turned = laying_under.changed(hand.session.garden, angle_deg=30.0).backdrop
    hand.drag(corner, turned.corners[1])
    after = hand.session.garden.backdrop
    assert after.angle_deg == pytest.approx(30.0, abs=1.0)  # a pixel more or less
    assert after.centre == under.centre


def test_esc_leaves_a_drag_without_a_trace(hand):
    before = hand.session.garden
    hand.view.set_tool("backdrop")
    hand.drag((2.0, 1.5), (3.0, 1.0), let_go=False)
    assert hand.view.plan.backdrop.value.centre != (2.0, 1.5)
    hand.key(KEY.Key_Escape)
    hand.release((3.0, 1.0))
    assert hand.session.garden is before
    assert hand.view.plan.backdrop.value is before.backdrop


def test_what_is_locked_is_not_dragged_and_says_so(hand):
    hand.session.propose(laying_under.changed(hand.session.garden, locked=True), "Lock")
    before = hand.session.garden
    hand.view.set_tool("backdrop")
    hand.drag((2.0, 1.5), (3.0, 1.0))
    hand.key(KEY.Key_Left)
    assert "locked" in hand.said[-1]
    assert hand.session.garden is before


def test_a_click_on_it_selects_nothing_and_beds_lie_above(hand):
    hand.click((3.0, 2.5))
    assert hand.session.selection == frozenset()
    bed = hand.view.plan.parts["bed-1"]
    assert hand.view.plan.backdrop.zValue() < bed.zValue()


def _seen(hand, place):
    shot = hand.view.viewport().grab().toImage()
    return shot.pixelColor(hand.pixel(place))


def test_it_is_seen_dimmed_hidden_and_after_panning(qtbot):
    """Black under paper #F6F3EA: dimmed by d it is the paper's value times d (linear mixing of a painter)."""
    hand = Hand(
        qtbot, garden(backdrop=backdrop(400, 300, metres_per_pixel=0.01, centre=(2.0, 3.0), dimmed=0.5))
    )
    hand.view.set_grid(False)
    hand.view.show_box(QRectF(-100, -100, 700, 700))
    place = (2.0, 3.5)
    assert _seen(hand, place).red() == pytest.approx(0.5 * 0xF6, abs=2)
    hand.session.propose(laying_under.changed(hand.session.garden, dimmed=0.0), "Dim")
    assert _seen(hand, place).red() == 0
    hand.view.pan_by(120, -60)
    assert _seen(hand, place).red() == 0
    hand.view.zoom_in()
    assert _seen(hand, place).red() == 0
    hand.session.propose(laying_under.changed(hand.session.garden, shown=False), "Hide")
    assert _seen(hand, place).name().upper() == "#F6F3EA"


def test_its_edges_lie_where_they_are_said_to(qtbot):
    hand = Hand(
        qtbot, garden(backdrop=backdrop(400, 300, metres_per_pixel=0.01, centre=(2.0, 3.0), dimmed=0.0))
    )
    hand.view.set_grid(False)
    hand.view.show_box(QRectF(-100, -100, 700, 700))
    left = hand.pixel((0.0, 3.6))
    shot = hand.view.viewport().grab().toImage()
    assert shot.pixelColor(left + QPoint(3, 0)).red() == 0
    assert shot.pixelColor(left - QPoint(3, 0)).red() == 0xF6


def test_a_picture_that_cannot_be_decoded_leaves_the_garden_usable(qtbot, qtlog):
    cut = backdrop(400, 300)
    broken = png(400, 300)[:45] + bytes(200)
    content = laying_under.rebuilt(cut.picture, data=reading.base64_of(broken))
    with qtlog.disabled():
        hand = Hand(qtbot, garden(backdrop=laying_under.rebuilt(cut, picture=content)))
        hand.view.viewport().grab()
    hand.click((0.3, 0.3))
    assert hand.session.selection == {"bed-1"}


def test_pictures_of_the_plan_leave_it_out_unless_asked(open_window, tmp_path):
    value = garden(backdrop=backdrop(400, 300, metres_per_pixel=0.01, centre=(2.0, 1.5), dimmed=0.0))
    bare = laying_under.with_backdrop(value, None)
    for name, under in (("a.png", value), ("b.png", bare)):
        write_picture(under, "l1", tmp_path / name, value.layouts[0].middle)
    assert QImage(str(tmp_path / "a.png")) == QImage(str(tmp_path / "b.png"))
    main = open_window(Session(value))
    save_picture(main.session, tmp_path / "c.png", Picture(backdrop=True), Measure())
    save_picture(main.session, tmp_path / "d.png", Picture(), Measure())
    assert QImage(str(tmp_path / "c.png")) != QImage(str(tmp_path / "d.png"))


# in the window


@pytest.fixture
def main(open_window):
    return open_window(Session(garden()))


def test_it_is_laid_scaled_and_travels_with_the_file(main, tmp_path):
    path = tmp_path / "allotment survey.png"
    image(800, 600).save(str(path))
    assert main.background.lay(path)
    under = main.session.garden.backdrop
    assert under.name == "allotment survey"
    assert not under.locked
    assert main.view.tool is main.view.tools["backdrop scale"]
    path.unlink()
    again = garden_from_bytes(garden_to_bytes(main.session.garden), "g")
    assert again == main.session.garden
    main.session.history.undo()
    assert main.session.garden.backdrop is None


def test_letters_of_a_unit_do_not_choose_a_tool_while_a_distance_is_typed(main, qtbot):
    """M alone is the tool that measures."""
    session = main.session
    session.propose(laying_under.with_backdrop(session.garden, backdrop(400, 300)), "Lay")
    main.activateWindow()
    main.background.work("backdrop scale")
    qtbot.waitUntil(main.view.hasFocus)
    port = main.view.viewport()
    for x in (0.5, 2.5):
        at = main.view.mapFromScene(QPointF(100 * x, 60))
        QTest.mouseClick(port, Qt.MouseButton.LeftButton, pos=at)
    QTest.keyClicks(main.view, "350 cm")
    assert main.view.tool is main.view.tools["backdrop scale"]
    QTest.keyClick(main.view, KEY.Key_Return)
    assert session.garden.backdrop.locked


def test_a_refused_picture_changes_nothing_and_is_told(main, tmp_path, qtbot):
    path = tmp_path / "bomb.png"
    path.write_bytes(png(60_000, 60_000))
    with qtbot.waitSignal(main.session.refused) as said:
        assert not main.background.lay(path)
    assert "60000 × 60000" in said.args[0]
    assert main.session.garden.backdrop is None


def _dropped(main, path):
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    event = QDropEvent(
        QPointF(300, 300), Qt.DropAction.CopyAction, data, Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )  # fmt: skip
    main.dropEvent(event)


@pytest.mark.parametrize(("answer", "laid"), [("lay", True), (None, False)])
def test_a_dropped_image_is_offered_as_background(main, tmp_path, monkeypatch, qtbot, answer, laid):
    path = tmp_path / "plot.jpg"
    image(80, 60).save(str(path))
    asked = []
    monkeypatch.setattr(laying, "choose", lambda *said: asked.append(said) or answer)
    _dropped(main, path)
    qtbot.waitUntil(lambda: bool(asked))
    assert "plot.jpg" in asked[0][2]
    assert (main.session.garden.backdrop is not None) is laid


def test_the_inspector_dims_locks_and_widens_it(main, qtbot):
    session = main.session
    session.propose(laying_under.with_backdrop(session.garden, backdrop(400, 300)), "Lay")
    main.inspector.refresh()
    fields = main.inspector.garden.backdrop
    assert fields.isVisible()
    fields.dimmed.setFocus()
    steps = session.history.count()
    fields.dimmed.setValue(70)
    fields.dimmed.setValue(80)
    assert main.view.plan.backdrop.value.dimmed == pytest.approx(0.8)  # seen at once
    qtbot.waitUntil(lambda: session.garden.backdrop.dimmed == pytest.approx(0.8), timeout=3000)
    assert session.history.count() == steps + 1
    fields._width.setValue(800.0)  # centimetres
    fields._width.editingFinished.emit()
    assert session.garden.backdrop.metres_per_pixel == pytest.approx(8.0 / 400)
    fields.locked.click()
    assert session.garden.backdrop.locked
    main.inspector.refresh()
    assert not fields.scale.isEnabled()
    assert "locked" in main.actions_.why_not("backdrop scale")
    main.actions_.all["backdrop show"].trigger()
    assert not session.garden.backdrop.shown
    main.actions_.all["backdrop remove"].trigger()
    assert session.garden.backdrop is None
    main.inspector.refresh()
    assert not fields.isVisible()
