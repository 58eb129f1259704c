"""Where words go: never on what is placed, never on each other."""

from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QLineF, QPoint, QRect, QRectF, QSize

from gardencanvas.canvas.cursor_words import place
from gardencanvas.canvas.items.names import Wanted, place_plates

ROOM = QRect(0, 0, 900, 600)


@given(
    st.integers(80, 400), st.integers(24, 80), st.integers(0, 899), st.integers(0, 599),
    st.integers(-200, 880), st.integers(-200, 580), st.integers(1, 500), st.integers(1, 300),
)  # fmt: skip
def test_words_keep_clear_of_what_is_placed_while_any_side_has_room(wide, high, x, y, left, top, w, h):
    size, clear = QSize(wide, high), QRect(left, top, w, h)
    spot = QRect(place(size, QPoint(x, y), clear, ROOM), size)
    assert ROOM.contains(spot)
    gap = 18 + 4
    below = max(clear.bottom(), y) + gap + high <= ROOM.bottom()
    above = min(clear.top(), y) - gap - high >= ROOM.top()
    right = clear.right() + gap + wide <= ROOM.right()
    before = clear.left() - gap - wide >= ROOM.left()
    if below or above or right or before:
        assert not spot.intersects(clear)


boxes = st.builds(QRectF, st.floats(0, 800), st.floats(0, 500), st.floats(60, 300), st.floats(20, 200))


@given(st.lists(st.tuples(boxes, st.floats(10, 200)), max_size=25))
def test_no_two_names_cover_each_other(given_boxes):
    wanted = [
        Wanted(
            box,
            QLineF(box.topLeft(), box.topRight()),
            QLineF(box.bottomLeft(), box.bottomRight()),
            width,
        )
        for box, width in given_boxes
    ]
    placed = place_plates(wanted)
    plates = [plate for _, plate in placed]
    assert not any(a.intersects(b) for i, a in enumerate(plates) for b in plates[:i])
    for index, plate in placed:
        box = wanted[index].box
        assert box.top() - 20 < plate.center().y() < box.bottom() + 20
