"""What every item of the scene needs to paint itself: colours, stamps, scale and units."""

from dataclasses import dataclass, field

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPen

from gardencanvas.canvas.palette import LIGHT, Palette, Tint, palette, tint_of
from gardencanvas.canvas.symbols.stamps import Stamps
from gardencanvas.words.plain import Measure

CM = 100.0  # scene units in a metre: one unit is one centimetre


@dataclass(slots=True)
class Look:
    """Shared by scene and items; ``scale`` is logical pixels per centimetre."""

    colours: Palette = LIGHT
    stamps: Stamps = field(default_factory=Stamps)
    scale: float = 2.0
    measure: Measure = field(default_factory=Measure)
    vector: bool = False  # draw lines and hatches that scale: for paper and pictures
    stamped: bool = True  # stamp plants from ready pictures; else draw each as shapes
    finest: int = 2  # detail that shapes are drawn with, at most
    marks: bool = True
    names: bool = True
    backdrop: bool = True  # draw the background picture
    still: bool = False  # reduced motion: nothing fades
    family: str = ""  # font family; empty means the application's
    _known_fonts: dict[tuple[float, bool], tuple[QFont, QFontMetricsF]] = field(default_factory=dict)

    def use(self, dark: bool) -> None:
        """Change between the light and the dark colours."""
        self.colours = palette(dark)

    def tint(self, family: str, crop_id: str) -> Tint:
        """A crop's tint in the present colours."""
        return tint_of(family, crop_id, self.colours.dark)

    def font(self, pixels: float, *, bold: bool = False) -> QFont:
        """The plan's font at a size in pixels."""
        return self._fonts(pixels, bold)[0]

    def metrics(self, pixels: float, *, bold: bool = False) -> QFontMetricsF:
        """Measures of that font."""
        return self._fonts(pixels, bold)[1]

    def _fonts(self, pixels: float, bold: bool) -> tuple[QFont, QFontMetricsF]:
        known = self._known_fonts.get((pixels, bold))
        if known is None:
            font = QFont(self.family) if self.family else QFont()
            font.setPixelSize(round(pixels))
            if bold:
                font.setWeight(QFont.Weight.DemiBold)
            known = self._known_fonts[(pixels, bold)] = (font, QFontMetricsF(font))
        return known

    def elided(self, text: str, font: QFont, width: float) -> str:
        """The text as one line, ended by an ellipsis where it is too long."""
        line = " ".join(text.split())[:400]
        return QFontMetricsF(font).elidedText(line, Qt.TextElideMode.ElideRight, width)

    def line(
        self,
        colour: str | QColor,
        pixels: float,
        style: Qt.PenStyle = Qt.PenStyle.SolidLine,
        *,
        alpha: int = 255,
    ) -> QPen:
        """A pen for lines in scene units that is so many pixels wide at the present zoom.

        Not a cosmetic pen: that would be a hair on paper, where a pixel is far smaller.
        """
        return pen(colour, pixels / self.scale, style, alpha=alpha)


def pen(
    colour: str | QColor, width: float, style: Qt.PenStyle = Qt.PenStyle.SolidLine, *, alpha: int = 255
) -> QPen:
    """A round-jointed pen, its width in the painter's units."""
    tone = QColor(colour)
    tone.setAlpha(alpha)
    return QPen(tone, width, style, Qt.PenCapStyle.RoundCap, Qt.PenJoinStyle.RoundJoin)


def tone(colour: str, alpha: int) -> QColor:
    """A colour with an opacity of 0-255."""
    result = QColor(colour)
    result.setAlpha(alpha)
    return result
