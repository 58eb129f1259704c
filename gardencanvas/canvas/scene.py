"""The plan as a scene: one item for each thing drawn, kept in step with the garden by identity.

One scene unit is one centimetre; x right, y down.
"""

from collections.abc import Callable, Iterable
from datetime import date

from PySide6.QtCore import QObject, QPointF, QRectF
from PySide6.QtGui import QPainterPath
from PySide6.QtWidgets import QGraphicsScene

from gardencanvas.canvas.fade import Fade
from gardencanvas.canvas.hidden import Hidden
from gardencanvas.canvas.items import order
from gardencanvas.canvas.items.backdrop import BackdropItem
from gardencanvas.canvas.items.ground import BedItem, BedLabel, PathItem
from gardencanvas.canvas.items.mark import MarkItem
from gardencanvas.canvas.items.names import NamesItem
from gardencanvas.canvas.items.overlay import SelectionItem
from gardencanvas.canvas.items.part import Part
from gardencanvas.canvas.items.planting import PlantingItem
from gardencanvas.canvas.items.plants import PlantsItem
from gardencanvas.canvas.items.standing import CoverItem, FixtureItem, ShadowItem, SupportItem
from gardencanvas.canvas.look import Look
from gardencanvas.canvas.shadows import shadows_of
from gardencanvas.canvas.shapes import span
from gardencanvas.canvas.sizes import Sizes
from gardencanvas.crops.catalogue import Catalogue
from gardencanvas.fit.accepted import quiet
from gardencanvas.fit.report import FitReport
from gardencanvas.garden.garden import Garden, Item
from gardencanvas.garden.ground import Bed, Cover, Fixture, LineSupport, Path, RingSupport
from gardencanvas.garden.planting import Planting
from gardencanvas.words.plain import planting_name

_GHOST_OPACITY = 0.82


class PlanScene(QGraphicsScene):
    """Shows one layout of one garden on one date."""

    def __init__(self, look: Look, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.look = look
        self.sizes = Sizes()
        self.parts: dict[str, Part] = {}
        self.marks: dict[str, MarkItem] = {}
        self._labels: dict[str, BedLabel] = {}
        self._shadows: list[ShadowItem] = []
        self._shadows_for: tuple[object, ...] = ()
        self.backdrop = BackdropItem(look)
        self.addItem(self.backdrop)
        self.selected = SelectionItem(look)
        self.addItem(self.selected)
        self.plants = PlantsItem(look)
        self.ghost_plants = PlantsItem(look, order.GHOST + 1)
        self.ghost_plants.setOpacity(_GHOST_OPACITY)
        self.addItem(self.plants)
        self.addItem(self.ghost_plants)
        self._touched = QRectF()
        self._fade = Fade(self)
        self.names = NamesItem(look)
        self.addItem(self.names)
        self._selection: frozenset[str] = frozenset()
        self._on = date(2000, 7, 1)
        self._crops: Catalogue | None = None
        self.garden: Garden | None = None
        self._hushed: frozenset[str] = frozenset()
        self.layout_id = ""
        self.ghosts: frozenset[str] = frozenset()  # ids drawn as not yet put down
        self._hidden = Hidden()

    # what is shown

    def show_garden(self, garden: Garden, layout_id: str, crops: Catalogue) -> None:
        """Show this garden: items whose value is the same object stay untouched."""
        layout = garden.layout(layout_id)
        if crops is not self._crops:
            self._crops = crops
        self.garden, self.layout_id = garden, layout.id
        self.backdrop.put(garden.backdrop if self.look.backdrop else None)
        self.sizes.prepare(garden, layout, crops)
        shown: set[str] = set()
        for item in (*layout.items(), *garden.fixtures):
            shown.add(item.id)
            part = self.parts.get(item.id)
            if isinstance(part, PlantingItem) and part.ghost and item.id not in self.ghosts:
                part.haunt(False)
                part.show_footprints(item.id in self._selection)
                self._touch(part)
                self._veil(part)
            if part is None:
                self._add(item)
            elif part.value is not item:
                self._replace(part, item)
        for gone in [i for i in self.parts if i not in shown]:
            self._drop(gone)
        self._lay_names()
        self._lay_plants()
        self._cast_shadows()
        self._outline_selection()

    def judge(self, report: FitReport | None, *, live: bool = False) -> None:
        """Show the verdicts of this report; changes fade in, but for ``live`` ones during a drag."""
        fits = report.plantings if report is not None else {}
        self._hush(report)
        changed = [mark for planting_id, mark in self.marks.items() if mark.judge(fits.get(planting_id))]
        if changed and not (live or self.look.still):
            self._fade.begin(changed)

    def _hush(self, report: FitReport | None) -> None:
        """Draw the marks of plantings quietly of which all that is wrong was accepted."""
        hushed: frozenset[str] = frozenset()
        if report is not None and self.garden is not None and report.layout == self.layout_id:
            hushed = quiet(report, self.garden.layout(report.layout))
        for planting_id in hushed ^ self._hushed:
            mark = self.marks.get(planting_id)
            if mark is not None:
                mark.hush(planting_id in hushed)
        self._hushed = hushed

    def show_date(self, on: date) -> None:
        """Show the plants, covers and shadows of a day."""
        self._on = on
        self._touched = self.plants.boundingRect()
        for part in self.parts.values():
            if isinstance(part, (PlantingItem, CoverItem)):
                part.show_date(on)
        for mark in self.marks.values():
            mark.update()
        self._lay_plants()
        self._cast_shadows()

    def select(self, ids: Iterable[str]) -> None:
        """Outline these items, and the full growth of selected plantings."""
        chosen = frozenset(ids)
        for item_id in chosen ^ self._selection:
            part = self.parts.get(item_id)
            if isinstance(part, PlantingItem):
                part.show_footprints(item_id in chosen)
        self._selection = chosen
        self._outline_selection()

    def rescale(self, scale: float) -> None:
        """Follow the zoom: logical pixels per centimetre."""
        if scale == self.look.scale:
            return
        self.look.scale = scale
        for item in self.items():
            if isinstance(item, (Part, BedLabel)):
                item.rescale()

    def extent(self) -> QRectF:
        """The box round everything that is drawn, in centimetres; the picture's where nothing else is."""
        return (
            span([part.value for part in self.parts.values() if self.shows(part)])
            or self.backdrop.boundingRect()
        )

    def trim_shadows(self, box: QRectF) -> None:
        """Let no shadow fall outside a box."""
        for shadow in self._shadows:
            shadow.trim(box)

    # finding

    def items_within(self, box: QRectF) -> list[str]:
        """Ids of the items that lie wholly in a box and can be picked; beds only where nothing else does."""
        inside = [
            i
            for i, part in self.parts.items()
            if self.free(part) and box.contains(part.outline.boundingRect())
        ]
        small = [i for i in inside if not isinstance(self.parts[i].value, (Bed, Path, Fixture))]
        return small or inside

    def touched(self, box: QRectF) -> list[str]:
        """Ids of the plantings whose outline a box touches."""
        plantings = ((i, p) for i, p in self.parts.items() if isinstance(p, PlantingItem) and self.shows(p))
        return [i for i, p in plantings if p.outline.intersects(box)]

    def shows(self, part: Part) -> bool:
        """Whether an item is drawn: what is still on the mouse always is."""
        return part.value.id in self.ghosts or not self._hidden.hides(part.value)

    def free(self, part: Part) -> bool:
        """Whether the mouse can pick an item: it is drawn and not locked."""
        return self.shows(part) and not part.value.locked

    def item_at(self, point: QPointF, *, free: bool = False) -> str | None:
        """The id of what a click at a point means: the nearest plant, then what lies on top.

        With ``free`` what is locked is passed over; but a locked planting covers the bed that it lies in.
        """
        usable = self.free if free else self.shows
        planting = self._planting_at(point, usable)
        if planting is not None:
            return planting
        for kinds in ((SupportItem,), (CoverItem,), (FixtureItem,)):
            found = self._topmost(point, kinds, usable)
            if found is not None:
                return found
        if free and self._planting_at(point, self.shows) is not None:
            return None
        return self._topmost(point, (BedItem,), usable) or self._topmost(point, (PathItem,), usable)

    def _planting_at(self, point: QPointF, usable: Callable[[Part], bool]) -> str | None:
        slack = 5 / self.look.scale
        best: tuple[float, str] | None = None
        for item_id, part in self.parts.items():
            if isinstance(part, PlantingItem) and part.boundingRect().contains(point) and usable(part):
                away = part.station_at(point, slack)
                inside = part.outline.contains(point)
                if away < float("inf") or inside:
                    score = away / max(part.state.radius_m * 100, slack) if away < float("inf") else 2.0
                    if best is None or score < best[0]:
                        best = (score, item_id)
        return None if best is None else best[1]

    def _topmost(
        self, point: QPointF, kinds: tuple[type[Part], ...], usable: Callable[[Part], bool]
    ) -> str | None:
        for item_id in reversed(self.parts):
            part = self.parts[item_id]
            if isinstance(part, kinds) and part.outline.contains(point) and usable(part):
                return item_id
        return None

    # keeping in step

    def _add(self, item: Item) -> None:
        part: Part
        if isinstance(item, Planting):
            part = PlantingItem(self.look, item, self.sizes.of(item), self._on)
            part.haunt(item.id in self.ghosts)
            mark = MarkItem(self.look, part)
            self.marks[item.id] = mark
            self.addItem(mark)
            part.show_footprints(item.id in self._selection or item.id in self.ghosts)
        elif isinstance(item, Bed):
            part = BedItem(self.look, item)
            label = BedLabel(self.look, item)
            self._labels[item.id] = label
            self.addItem(label)
        elif isinstance(item, Path):
            part = PathItem(self.look, item)
        elif isinstance(item, (RingSupport, LineSupport)):
            part = SupportItem(self.look, item)
        elif isinstance(item, Cover):
            part = CoverItem(self.look, item, self._on)
        else:
            part = FixtureItem(self.look, item)
        self.parts[item.id] = part
        self._touch(part)
        self.addItem(part)
        self._veil(part)

    def hide(self, hidden: Hidden) -> None:
        """Draw and hit what this hides no more, and the rest again."""
        if hidden == self._hidden:
            return
        self._hidden = hidden
        for part in self.parts.values():
            if part.isVisible() is not self.shows(part):
                self._touch(part)
                self._veil(part)
        self._lay_names()
        self._lay_plants()
        self._cast_shadows()
        self._outline_selection()

    def _veil(self, part: Part) -> None:
        """Draw an item with its mark and label, or neither."""
        shown = self.shows(part)
        for item in (part, self.marks.get(part.value.id), self._labels.get(part.value.id)):
            if item is not None and item.isVisible() is not shown:
                item.setVisible(shown)

    def _touch(self, part: Part) -> None:
        """Remember where plants are to be drawn anew."""
        if isinstance(part, PlantingItem):
            self._touched = self._touched.united(part.rest)

    def _lay_plants(self) -> None:
        """Hand the plantings to the layers that draw their plants, if any of them changed."""
        if self._touched.isNull():
            return
        parts = [p for p in self.parts.values() if isinstance(p, PlantingItem) and self.shows(p)]
        self.plants.put([p for p in parts if not p.ghost], self._touched)
        self.ghost_plants.put([p for p in parts if p.ghost], self._touched)
        self._touched = QRectF()

    def _replace(self, part: Part, item: Item) -> None:
        if type(part.value) is not type(item):
            self._drop(item.id)
            self._add(item)
        elif isinstance(part, PlantingItem) and isinstance(item, Planting):
            self._touch(part)
            part.stand(item, self.sizes.of(item), self._on)
            self._touch(part)
            self.marks[item.id].follow(part)
        else:
            part.put(item)
            if isinstance(item, Bed):
                self._labels[item.id].put(item)

    def _drop(self, item_id: str) -> None:
        if item_id in self.parts:
            self._touch(self.parts[item_id])
        for item in (
            self.parts.pop(item_id, None),
            self.marks.pop(item_id, None),
            self._labels.pop(item_id, None),
        ):
            if item is not None:
                self.removeItem(item)

    def _lay_names(self) -> None:
        if self._touched.isNull():
            return
        named = {}
        box = QRectF()
        for item_id, mark in self.marks.items():
            part = mark.plants
            if not self.shows(part):
                continue
            name = planting_name(self._crops, part.value) if self._crops is not None else part.value.crop
            named[item_id] = (part, name)
            box = box.united(part.outline_box)
        self.names.put(named, box, self._touched)

    def _outline_selection(self) -> None:
        path = QPainterPath()
        for item_id in sorted(self._selection):
            part = self.parts.get(item_id)
            if part is not None and self.shows(part):
                path.addPath(part.outline)
        self.selected.put(path)

    def _cast_shadows(self) -> None:
        if self.garden is None:
            return
        fixtures = tuple(f for f in self.garden.fixtures if not self._hidden.hides(f))
        key = (fixtures, self.garden.site, self._on)
        if len(self._shadows_for) == 3 and all(
            a is b or a == b for a, b in zip(key, self._shadows_for, strict=True)
        ):
            return
        self._shadows_for = key
        for item in self._shadows:
            self.removeItem(item)
        self._shadows = []
        for fixture in fixtures:
            shades = shadows_of(self.garden.site, fixture, self._on)
            if shades:
                item = ShadowItem(self.look, shades, fixture.clear_share)
                self._shadows.append(item)
                self.addItem(item)
