"""The background picture: read by its header, kept whole, scaled by two points as the closed form says."""

import base64
import struct
import zlib
from math import cos, hypot, radians, sin

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from pydantic import ValidationError

from gardencanvas.garden import laying_under
from gardencanvas.garden.backdrop import Backdrop
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.picture import MAX_PICTURE_BYTES, Picture, base64_of, said_size
from tests.garden.makers import garden
from tests.garden.pictures import backdrop, picture, png

# The smallest JPEG that its standard allows to name a size: SOI, APP0 of two bytes, SOF2 with Y 513 and X 258
JPEG = bytes.fromhex("ffd8 ffe0 0004 0000 ffff c2 000b 08 0201 0102 01 01 11 00")


def test_a_png_says_its_size():
    assert said_size(png(300, 7)) == ("png", 300, 7)


def test_a_jpeg_says_its_size_whatever_stands_before_it():
    assert said_size(JPEG) == ("jpeg", 258, 513)


@given(st.binary(max_size=80), st.sampled_from([b"", b"\xff\xd8\xff", b"\x89PNG\r\n\x1a\n"]))
def test_any_bytes_are_read_without_fault(data, begin):
    found = said_size(begin + data)
    assert found is None or found[0] in {"png", "jpeg"}


@pytest.mark.parametrize(
    ("fields", "said"),
    [
        ({"data": "@@@@"}, "base64"),
        ({"data": base64_of(b"GIF89a" + bytes(40))}, "said to be"),
        ({"width_px": 5}, "said to be"),
        ({"kind": "jpeg"}, "said to be"),
        ({"data": base64_of(png(60_000, 60_000)), "width_px": 60_000, "height_px": 60_000}, "4096"),
        ({"data": base64_of(png(4, 3) + bytes(MAX_PICTURE_BYTES))}, "4000000"),
    ],
    ids=["no base64", "another kind", "another width", "said to be JPEG", "a bomb", "too many bytes"],
)
def test_what_is_no_small_picture_is_refused_before_it_is_decoded(fields, said):
    whole = {"kind": "png", "width_px": 4, "height_px": 3, "data": base64_of(png(4, 3))}
    with pytest.raises(ValidationError, match=said):
        Picture(**{**whole, **fields})


def test_a_header_may_not_belie_its_size():
    """60,000 pixels a side would take 14 GB: the header is believed, not what stands beside it."""
    with pytest.raises(ValidationError, match="said to be"):
        Picture(kind="png", width_px=4, height_px=3, data=base64_of(png(60_000, 60_000)))


def test_the_bytes_come_back_as_they_were():
    content = png(9, 5)
    assert picture(9, 5).content == content
    assert base64.b64decode(picture(9, 5).data) == content


places = st.floats(-50, 50, allow_nan=False)


@given(
    st.tuples(places, places),
    st.floats(0.2, 20),
    st.tuples(st.integers(0, 40), st.integers(0, 30)),
    st.tuples(st.integers(0, 40), st.integers(0, 30)),
    st.floats(0, 359),
)
def test_two_points_come_to_lie_as_far_apart_as_was_typed(centre, distance, p, q, angle):
    """Closed form: the pixels p and q lie |q − p| apart, so a pixel is distance / |q − p| wide."""
    assume(1e-5 < distance / max(hypot(q[0] - p[0], q[1] - p[1]), 1e-9) < 0.5)
    before = garden(backdrop=backdrop(40, 30, centre=centre, metres_per_pixel=0.05, angle_deg=angle))
    a, b = before.backdrop.on_plan(p), before.backdrop.on_plan(q)
    after = laying_under.scaled(before, a, b, distance).backdrop
    assert after.metres_per_pixel == pytest.approx(distance / hypot(q[0] - p[0], q[1] - p[1]), rel=1e-9)
    assert after.on_plan(p) == pytest.approx(a, abs=1e-9)  # the first point stays where it was clicked
    a, b = after.on_plan(p), after.on_plan(q)
    assert hypot(b[0] - a[0], b[1] - a[1]) == pytest.approx(distance, rel=1e-9)
    assert after.angle_deg == angle
    assert after.locked


def test_a_corner_of_a_turned_picture():
    """Turned by a quarter clockwise (y points down), what lay to the right of the middle lies below it."""
    turned = backdrop(40, 30, centre=(1.0, 2.0), metres_per_pixel=0.1, angle_deg=90.0)
    assert turned.on_plan((40.0, 15.0)) == pytest.approx((1.0, 4.0))
    assert turned.size_m == pytest.approx((4.0, 3.0))


@given(st.floats(0, 360), st.tuples(st.floats(-1, 41), st.floats(-1, 31)))
def test_it_covers_what_its_pixels_cover(angle, pixel):
    under = backdrop(40, 30, centre=(3.0, -2.0), metres_per_pixel=0.1, angle_deg=angle)
    inside = 1e-6 < pixel[0] < 40 - 1e-6 and 1e-6 < pixel[1] < 30 - 1e-6
    outside = not (-1e-6 < pixel[0] < 40 + 1e-6 and -1e-6 < pixel[1] < 30 + 1e-6)
    if inside or outside:
        assert under.covers(under.on_plan(pixel)) is inside


def test_what_is_locked_stays():
    value = garden(backdrop=backdrop(4, 3, locked=True))
    for edit in (
        lambda: laying_under.shifted(value, 1.0, 0.0),
        lambda: laying_under.turned(value, 5.0),
        lambda: laying_under.scaled(value, (0.0, 0.0), (1.0, 0.0), 2.0),
    ):
        with pytest.raises(Refusal, match="locked"):
            edit()
    assert laying_under.changed(value, dimmed=0.5).backdrop.dimmed == 0.5


def test_moving_and_turning_share_the_bytes():
    value = garden(backdrop=backdrop(4, 3))
    after = laying_under.turned(laying_under.shifted(value, 1.0, 2.0), 370.0)
    assert after.backdrop.centre == (1.0, 2.0)
    assert after.backdrop.angle_deg == pytest.approx(10.0)
    assert after.backdrop.picture is value.backdrop.picture


@pytest.mark.parametrize(
    ("b", "distance", "said"),
    [((0.0, 0.0), 4.2, "on top of each other"), ((0.001, 0.0), 1000.0, "one pixel")],
    ids=["the same place", "a pixel of metres"],
)
def test_a_scale_that_makes_no_sense_is_refused(b, distance, said):
    with pytest.raises(Refusal, match=said):
        laying_under.scaled(garden(backdrop=backdrop(4, 3)), (0.0, 0.0), b, distance)


def test_without_a_picture_there_is_nothing_to_change():
    with pytest.raises(Refusal, match="no background picture"):
        laying_under.changed(garden(), dimmed=0.1)


def test_rotation_agrees_with_the_rotation_matrix():
    under = backdrop(40, 30, centre=(0.0, 0.0), metres_per_pixel=1 / 64, angle_deg=33.0)
    x, y = (31.0 - 20.0) / 64, (4.0 - 15.0) / 64
    c, s = cos(radians(33.0)), sin(radians(33.0))
    assert under.on_plan((31.0, 4.0)) == pytest.approx((x * c - y * s, x * s + y * c))


def test_the_maker_of_these_tests_writes_sound_pngs():
    """CRC and zlib stream as ISO/IEC 15948 asks for; a reader of its own finds the same pixels."""
    data = png(3, 2)
    at, found = 8, {}
    while at < len(data):
        (length,) = struct.unpack(">I", data[at : at + 4])
        kind, body = data[at + 4 : at + 8], data[at + 8 : at + 8 + length]
        assert zlib.crc32(kind + body) == struct.unpack(">I", data[at + 8 + length : at + 12 + length])[0]
        found[kind] = body
        at += 12 + length
    assert len(zlib.decompress(found[b"IDAT"])) == 2 * (1 + 3)


def test_a_backdrop_needs_a_sound_scale():
    with pytest.raises(ValidationError, match="metres_per_pixel"):
        Backdrop(name="sketch", picture=picture(4, 3), centre=(0.0, 0.0), metres_per_pixel=0.0)
