"""Small pictures for tests, written byte by byte: grey PNGs of any size, one row of pixels repeated."""

import struct
import zlib

from gardencanvas.garden.backdrop import Backdrop
from gardencanvas.garden.picture import Picture, base64_of

_BODY = 4_000_000  # pixels; a larger picture gets a body that is cut short, as a bomb would


def png(width, height):
    """A grey picture; above four million pixels only its header is sound."""
    rows = bytes(1 + width) * height if width * height <= _BODY else bytes(64)
    header = struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)
    chunks = [(b"IHDR", header), (b"IDAT", zlib.compress(rows)), (b"IEND", b"")]
    made = b"\x89PNG\r\n\x1a\n"
    for kind, body in chunks:
        made += struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))
    return made


def picture(width, height):
    return Picture(kind="png", width_px=width, height_px=height, data=base64_of(png(width, height)))


def backdrop(width, height, **changes):
    fields = {
        "name": "sketch",
        "picture": picture(width, height),
        "centre": (0.0, 0.0),
        "metres_per_pixel": 0.05,
    }
    return Backdrop(**{**fields, **changes})
