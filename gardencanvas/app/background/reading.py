"""An image file as a picture for a garden: bounded before it is decoded, made smaller, written anew.

It is always written anew, so that what a camera notes in a photo (place, time, device) does not travel along.
"""

from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QCoreApplication, QIODevice, QSize, Qt
from PySide6.QtGui import QColor, QImage, QImageReader, QImageWriter, QPainter

from gardencanvas.garden.edits import made
from gardencanvas.garden.picture import MAX_PICTURE_BYTES, MAX_SIDE_PX, Kind, Picture, base64_of

# Qt's names of the kinds that are read. SVG is none: it may name other files; nor is TIFF: its plugin crashes
# in some surroundings (writing one ends PySide6 6.11.3 on Linux)
KINDS = frozenset({"png", "jpeg", "jpg", "jfif", "webp", "bmp"})
SUFFIXES = (".png", ".jpg", ".jpeg", ".jfif", ".webp", ".bmp")
MAX_FILE_BYTES = 80_000_000  # our own choice: a large uncompressed scan
MAX_PIXELS = 100_000_000  # our own choice: twice a large camera's; 400 MB while it is being made smaller
_LIMIT_MB = 420  # of one decoded picture: MAX_PIXELS of four bytes
_QUALITIES = (88, 80, 70, 60)  # of JPEG, 0-100, tried in turn
_FEW_COLOURS = 256
_SMALLER = 0.75  # of each side, where no quality is small enough

translate = QCoreApplication.translate


class PictureRefused(ValueError):  # noqa: N818 - as the project's Refusal
    """A file that cannot become a background picture; ``str()`` is a sentence for the grower."""


def picture_of(path: Path) -> Picture:
    """The picture in an image file, at most ``MAX_SIDE_PX`` a side and ``MAX_PICTURE_BYTES`` long.

    Raises
    ------
    PictureRefused
        If the file is none, or too large.
    """
    data = _bytes_of(path)
    buffer = QBuffer()
    buffer.setData(QByteArray(data))
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    reader = QImageReader(buffer)
    reader.setDecideFormatFromContent(True)
    kind = bytes(reader.format().data()).decode("ascii", "replace")
    if kind not in KINDS:
        raise PictureRefused(
            translate("Background", "{0} is no picture that can be read: PNG, JPEG, WebP and BMP are.")
            .format(path.name)
        )  # fmt: skip
    _bound(reader, path.name)
    image = _decoded(reader)
    if image.isNull():
        raise PictureRefused(
            translate("Background", "{0} cannot be decoded: it is damaged, or far too large.").format(
                path.name
            )
        )
    return written(image)


def _bytes_of(path: Path) -> bytes:
    try:
        if not path.is_file():
            raise PictureRefused(translate("Background", "{0} is not a file.").format(path.name))
        with path.open("rb") as file:
            data = file.read(MAX_FILE_BYTES + 1)
    except OSError as error:
        raise PictureRefused(
            translate("Background", "{0} cannot be read: {1}.").format(path.name, error.strerror or error)
        ) from error
    if len(data) > MAX_FILE_BYTES:
        raise PictureRefused(
            translate("Background", "{0} is larger than {1} MB. Save a smaller copy of it first.").format(
                path.name, MAX_FILE_BYTES // 1_000_000
            )
        )
    return data


def _bound(reader: QImageReader, name: str) -> None:
    """Refuse what its header says to be too large; let the decoder make smaller what is only large."""
    size = reader.size()  # read from the header: nothing is decoded yet
    if not size.isValid() or size.isEmpty():
        raise PictureRefused(
            translate("Background", "{0} does not say how large it is, and is not read.").format(name)
        )
    if size.width() * size.height() > MAX_PIXELS:
        raise PictureRefused(
            translate(
                "Background",
                "{0} has {1} × {2} pixels; at most {3} million are read. Save a smaller copy of it first.",
            ).format(name, size.width(), size.height(), MAX_PIXELS // 1_000_000)
        )
    reader.setAutoTransform(True)  # a camera held upright
    if max(size.width(), size.height()) > MAX_SIDE_PX:
        reader.setScaledSize(_within(size))


def _decoded(reader: QImageReader) -> QImage:
    """The image; where it would take more memory than its header promised, none."""
    usual = QImageReader.allocationLimit()
    QImageReader.setAllocationLimit(_LIMIT_MB)
    try:
        return reader.read()
    finally:
        QImageReader.setAllocationLimit(usual)


def _within(size: QSize) -> QSize:
    fitted = size.scaled(MAX_SIDE_PX, MAX_SIDE_PX, Qt.AspectRatioMode.KeepAspectRatio)
    return fitted.expandedTo(QSize(1, 1))


def written(image: QImage) -> Picture:
    """A picture of that image: PNG where it has clear parts or few colours and is small so, else JPEG."""
    if max(image.width(), image.height()) > MAX_SIDE_PX:
        image = image.scaled(
            _within(image.size()),
            Qt.AspectRatioMode.IgnoreAspectRatio,
            Qt.TransformationMode.SmoothTransformation,
        )
    if image.hasAlphaChannel() or 0 < image.colorCount() <= _FEW_COLOURS or image.isGrayscale():
        content = _encoded(image, "png", -1)
        if len(content) <= MAX_PICTURE_BYTES:
            return _picture("png", image.size(), content)
    image = _on_white(image)
    while True:
        for quality in _QUALITIES:
            content = _encoded(image, "jpeg", quality)
            if len(content) <= MAX_PICTURE_BYTES:
                return _picture("jpeg", image.size(), content)
        image = image.scaled(
            image.size() * _SMALLER,
            Qt.AspectRatioMode.IgnoreAspectRatio,
            Qt.TransformationMode.SmoothTransformation,
        )


def _on_white(image: QImage) -> QImage:
    """The image without clear parts: JPEG knows none."""
    whole = QImage(image.size(), QImage.Format.Format_RGB32)
    whole.fill(QColor("white"))
    painter = QPainter(whole)
    try:
        painter.drawImage(0, 0, image)
    finally:
        painter.end()
    return whole


def _encoded(image: QImage, kind: str, quality: int) -> bytes:
    plain = image.copy()
    for key in plain.textKeys():
        plain.setText(key, "")
    device = QBuffer()
    device.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QImageWriter(device, kind.encode())
    writer.setQuality(quality)
    if not writer.write(plain):
        raise PictureRefused(translate("Background", "The picture could not be made smaller."))
    return bytes(device.data().data())


def _picture(kind: Kind, size: QSize, content: bytes) -> Picture:
    return made(Picture, kind=kind, width_px=size.width(), height_px=size.height(), data=base64_of(content))
