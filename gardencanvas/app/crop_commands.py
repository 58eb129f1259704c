"""Commands about crops that stand in the Plan menu."""

from collections.abc import Callable
from typing import TYPE_CHECKING

from gardencanvas.garden.planting import Planting

if TYPE_CHECKING:
    from gardencanvas.app.window import MainWindow

Command = tuple[str, str, Callable[[], None], str | None]  # name, text, what it does, shortcut


def crop_commands(window: "MainWindow") -> tuple[Command, ...]:
    """The commands of a window, in the order of the menu."""

    def page() -> None:
        key = crop_in_hand(window)
        if key is not None:
            window.tin.desk.show_page(*key)

    def variety() -> None:
        key = crop_in_hand(window)
        window.tin.desk.new_variety(key[0] if key else None)

    def crop() -> None:
        window.tin.desk.new_crop(None)

    desk = window.tin.desk
    return (
        ("crop page", window.tr("&What is known of the crop"), page, "F3"),
        ("new variety", window.tr("New &variety…"), variety, None),
        ("new crop", window.tr("New &crop…"), crop, None),
        ("import crops", window.tr("&Take in own crops…"), desk.import_file, None),
        ("export crops", window.tr("Write own crops to a &file…"), desk.export_file, None),
    )


def crop_in_hand(window: "MainWindow") -> tuple[str, str | None] | None:
    """The crop that is meant: that of the one planting selected, while the seed tin has not the focus."""
    session, tin, focus = window.session, window.tin, window.focusWidget()
    in_tin = focus is not None and tin.isAncestorOf(focus)
    if not in_tin and len(session.selection) == 1:
        item = session.garden.find(session.layout_id, next(iter(session.selection)))
        if isinstance(item, Planting):
            return item.crop, item.variety
    return tin.current
