"""The Arrange menu: mirrored, aligned, at equal gaps, repeated, split and joined."""

from collections.abc import Callable

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QMenu

from gardencanvas.app.menus.bar import Menus
from gardencanvas.canvas.naming import named
from gardencanvas.garden import edits
from gardencanvas.garden.arranging import Along, Edge, align, distribute
from gardencanvas.garden.errors import Refusal
from gardencanvas.garden.garden import Garden
from gardencanvas.garden.mirroring import Sides, mirror
from gardencanvas.garden.planting import Planting
from gardencanvas.garden.sharing import share, sharers
from gardencanvas.garden.splitting import join, parts_of
from gardencanvas.garden.stations import with_all_places
from gardencanvas.garden.value import new_id
from gardencanvas.season.usual_start import usual_start
from gardencanvas.words.refusals import why_refused

Edit = Callable[[Garden], Garden]


class ArrangeMenu(QObject):
    """Edits that put what is selected in order."""

    def __init__(self, menus: Menus) -> None:
        super().__init__(menus)
        self._menus, self._window = menus, menus.window
        menu = menus.menu(self.tr("&Arrange"))
        self._mirrors(menu)
        self._alignments(menu)
        self._gaps(menu)
        menus.add(menu, "repeat", self.tr("&Repeat in a grid…"), self._repeat, "Ctrl+Shift+R", self._needs(1))
        menu.addSeparator()
        menus.add(menu, "split", self.tr("&Split a planting…"), self._split, "Ctrl+Shift+X", self._not_split)
        menus.add(menu, "join", self.tr("&Join plantings"), self._join, "Ctrl+J", self._not_joined)
        menus.add(
            menu, "all places", self.tr("&Plant all places again"), self._all_places,
            why_not=self._nothing_left_out,
        )  # fmt: skip
        menus.add(
            menu, "share places", self.tr("S&hare its places with the seed tin’s crop"), self._share,
            "Ctrl+Shift+J", self._not_shared,
        )  # fmt: skip

    def _mirrors(self, menu: QMenu) -> None:
        texts: dict[Sides, str] = {
            "left and right": self.tr("Mirror left and ri&ght"),
            "top and bottom": self.tr("Mirror top and &bottom"),
        }
        for sides, text in texts.items():
            self._menus.add(
                menu, f"mirror {sides}", text, lambda sides=sides: self._mirror(sides),
                why_not=self._needs(1),
            )  # fmt: skip

    def _alignments(self, menu: QMenu) -> None:
        into = menu.addMenu(self.tr("&Align"))
        into.setToolTipsVisible(True)
        texts: dict[Edge, str] = {
            "left": self.tr("&Left edges"),
            "middle across": self.tr("Middles a&cross"),
            "right": self.tr("&Right edges"),
            "top": self.tr("&Top edges"),
            "middle down": self.tr("Middles &down"),
            "bottom": self.tr("&Bottom edges"),
        }
        for edge, text in texts.items():
            self._menus.add(
                into, f"align {edge}", text, lambda edge=edge: self._align(edge), why_not=self._needs(2)
            )

    def _gaps(self, menu: QMenu) -> None:
        texts: dict[Along, str] = {
            "across": self.tr("&Equal gaps across"),
            "down": self.tr("Equal gaps do&wn"),
        }
        for along, text in texts.items():
            self._menus.add(
                menu, f"gaps {along}", text, lambda along=along: self._distribute(along),
                why_not=self._needs(3),
            )  # fmt: skip

    # what is needed

    def _needs(self, least: int) -> Callable[[], str]:
        def why_not() -> str:
            if len(self._menus.session.selection) >= least:
                return ""
            if least == 1:
                return self.tr("Select something first.")
            return self.tr("Select at least {0} things first.").format(least)

        return why_not

    def _plantings(self) -> list[Planting]:
        session = self._menus.session
        found = (session.layout.by_id.get(i) for i in sorted(session.selection))
        return [p for p in found if isinstance(p, Planting)]

    def _not_split(self) -> str:
        plantings = self._plantings()
        if len(plantings) != 1 or len(self._menus.session.selection) != 1:
            return self.tr("Select one planting first.")
        if plantings[0].locked:
            return self.tr("It is locked; unlock it first.")
        pattern = plantings[0].pattern
        if parts_of(pattern, "along") < 2 and parts_of(pattern, "across") < 2:
            return self.tr("It is a single plant.")
        return ""

    def _not_joined(self) -> str:
        return "" if len(self._plantings()) > 1 else self.tr("Select two or more plantings first.")

    def _nothing_left_out(self) -> str:
        if any(p.pattern.left_out or p.pattern.moved for p in self._plantings() if not p.locked):
            return ""
        return self.tr("Select a planting of which single plants were left out or moved first.")

    def _not_shared(self) -> str:
        plantings = self._plantings()
        if len(plantings) != 1 or len(self._menus.session.selection) != 1:
            return self.tr("Select one planting first.")
        if plantings[0].pattern.places < 2:
            return self.tr("It is a single plant.")
        return self.tr("It is locked; unlock it first.") if plantings[0].locked else ""

    # what is done

    def _do(self, text: str, edit: Edit) -> None:
        session = self._menus.session
        found = (session.garden.find(session.layout_id, i) for i in sorted(session.selection))
        name = named([i for i in found if i is not None], session.catalogue)
        try:
            after = edit(session.garden)
        except Refusal as refusal:
            self._window.say(why_refused(refusal))
            return
        if not session.propose(after, text.format(name)):
            self._window.say(self.tr("Nothing changed: what is locked stays as it is."))

    def _mirror(self, sides: Sides) -> None:
        session = self._menus.session
        self._do(self.tr("Mirror {0}"), lambda g: mirror(g, session.layout_id, session.selection, sides))

    def _align(self, edge: Edge) -> None:
        session = self._menus.session
        self._do(self.tr("Align {0}"), lambda g: align(g, session.layout_id, session.selection, edge))

    def _distribute(self, along: Along) -> None:
        session = self._menus.session
        self._do(
            self.tr("Equal gaps between {0}"),
            lambda g: distribute(g, session.layout_id, session.selection, along),
        )

    def _join(self) -> None:
        session = self._menus.session
        ids = [p.id for p in self._plantings()]
        self._do(self.tr("Join {0}"), lambda g: join(g, session.layout_id, ids)[0])

    def _share(self) -> None:
        """Put the seed tin's crop on some of a planting's places, in turns with what stands there."""
        session, key = self._menus.session, self._window.tin.current
        if key is None:
            self._window.say(self.tr("Choose a crop in the seed tin first."))
            return
        (planting,), layout = self._plantings(), session.layout
        crop = session.catalogue.resolve(*key)
        start = usual_start(session.garden.site, crop, layout.year, layout.first_month)
        newcomer = edits.made(
            Planting, id=new_id("planting"), crop=key[0], varieties=(key[1],) if key[1] else (),
            pattern=planting.pattern, start=start,
        )  # fmt: skip
        self._do(
            self.tr("Share the places of {0}"),
            lambda g: share(g, session.layout_id, planting.id, newcomer),
        )
        found = session.layout.by_id.get(newcomer.id)
        if isinstance(found, Planting):
            session.select(p.id for p in sharers(session.layout, found))

    def _all_places(self) -> None:
        session = self._menus.session
        whole = [with_all_places(p) for p in self._plantings() if not p.locked]
        self._do(self.tr("Plant all places of {0}"), lambda g: edits.replace(g, session.layout_id, whole))

    def _repeat(self) -> None:
        from gardencanvas.app.repeat_dialog import RepeatDialog  # not needed to start

        RepeatDialog(self._window).exec()

    def _split(self) -> None:
        from gardencanvas.app.split_dialog import SplitDialog  # not needed to start

        SplitDialog(self._window, self._plantings()[0]).exec()
