"""A picture as it is kept in a garden's file: PNG or JPEG as base64, bounded before it is decoded."""

import base64
import binascii
from math import ceil
from typing import Annotated, Literal

from pydantic import Field, ValidationInfo, field_validator

from gardencanvas.garden.value import Value

MAX_PICTURE_BYTES = 3_000_000  # ten versions of a garden with it stay within the 50 MB that are kept of one
MAX_SIDE_PX = 4096  # 17 million pixels, 67 MB once decoded
MAX_TEXT = 4 * ceil(MAX_PICTURE_BYTES / 3)  # base64 makes four characters of three bytes: RFC 4648, 4

Kind = Literal["png", "jpeg"]
_PNG = b"\x89PNG\r\n\x1a\n"
_JPEG = b"\xff\xd8\xff"
# start-of-frame markers of ITU-T T.81, table B.1: C0 to CF but for DHT, JPG and DAC
_FRAMES = frozenset(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}
_ALONE = frozenset({0x01, *range(0xD0, 0xD9)})  # markers that no length follows


def said_size(data: bytes) -> tuple[Kind, int, int] | None:
    """Kind, width and height in pixels that a picture's header names, nothing decoded; None: neither kind.

    PNG: the chunk IHDR comes first (ISO/IEC 15948, 11.2.2).
    JPEG: the first start of frame (ITU-T T.81, B.2.2).
    """
    if data.startswith(_PNG):
        if len(data) < 24 or data[12:16] != b"IHDR":
            return None
        return "png", int.from_bytes(data[16:20]), int.from_bytes(data[20:24])
    if data.startswith(_JPEG):
        size = _frame(data)
        return None if size is None else ("jpeg", *size)
    return None


def _frame(data: bytes) -> tuple[int, int] | None:
    """Width and height of a JPEG's first frame."""
    at = 2
    while at + 9 <= len(data) and data[at] == 0xFF:
        marker = data[at + 1]
        if marker == 0xFF:  # fill bytes may stand before a marker
            at += 1
        elif marker in _ALONE:
            at += 2
        elif marker in _FRAMES:
            return int.from_bytes(data[at + 7 : at + 9]), int.from_bytes(data[at + 5 : at + 7])
        else:
            at += 2 + max(int.from_bytes(data[at + 2 : at + 4]), 2)
    return None


class Picture(Value):
    """The bytes of a picture. Its size stands beside them and must be the one that they name themselves."""

    kind: Kind
    width_px: Annotated[int, Field(ge=1, le=MAX_SIDE_PX)]
    height_px: Annotated[int, Field(ge=1, le=MAX_SIDE_PX)]
    data: Annotated[
        str,
        Field(min_length=1, max_length=MAX_TEXT, json_schema_extra={"contentEncoding": "base64"}),
    ]

    # of the field and not of the whole value: that would be asked again with each edit of what holds it
    @field_validator("data")
    @classmethod
    def _says_so_itself(cls, data: str, others: ValidationInfo) -> str:
        said = tuple(others.data.get(field) for field in ("kind", "width_px", "height_px"))
        if None in said:
            return data  # one of them was refused already
        try:
            content = base64.b64decode(data, validate=True)
        except (binascii.Error, ValueError) as error:
            raise ValueError("the picture is not written in base64") from error
        if said_size(content) != said:
            raise ValueError("the picture is not of the kind and size that it is said to be")
        return data

    @property
    def content(self) -> bytes:
        """The picture's own bytes."""
        return base64.b64decode(self.data)


def base64_of(content: bytes) -> str:
    """Bytes as they stand in a file."""
    return base64.b64encode(content).decode("ascii")
