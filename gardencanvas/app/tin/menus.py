"""Menus of the seed tin: what can be done with a row, and what can be added."""

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QMenu

from gardencanvas.app.crop_desk import CropDesk
from gardencanvas.app.session import Session
from gardencanvas.app.tin.rows import Key

if TYPE_CHECKING:
    from gardencanvas.app.seed_tin import SeedTin


def add_menu(tin: "SeedTin") -> QMenu:
    """What can be added, for the crop of the current row where there is one."""
    menu = QMenu(tin)
    desk = tin.desk
    menu.addAction(tin.tr("New variety…"), lambda: desk.new_variety(_crop(tin)))
    menu.addAction(tin.tr("New crop…"), lambda: desk.new_crop(None))
    menu.addAction(tin.tr("Add a seed lot…"), lambda: desk.add_lot(tin.current))
    menu.addSeparator()
    menu.addAction(tin.tr("Take in a file…"), desk.import_file)
    menu.addAction(tin.tr("Write to a file…"), desk.export_file)
    return menu


def _crop(tin: "SeedTin") -> str | None:
    return tin.current[0] if tin.current is not None else None


def row_menu(tin: "SeedTin", session: Session, desk: CropDesk, key: Key) -> QMenu:
    """What can be done with one row."""
    menu = QMenu(tin)
    crop_id = key[0]
    marked = session.library.marked
    pick = menu.addAction(tin.tr("Pick up"), tin.list.pick_current)
    menu.setDefaultAction(pick)
    menu.addAction(tin.tr("What is known of it… (F3)"), tin.list.page_current)
    menu.addAction(tin.tr("Where would it fit?"), tin.where_asked.emit)
    menu.addAction(tin.tr("Fill the bed with it…"), tin.fill_asked.emit)
    menu.addSeparator()
    favourite = menu.addAction(tin.tr("Favourite"), lambda: tin.star(crop_id))
    favourite.setCheckable(True)
    favourite.setChecked(crop_id in marked.favourites)
    wanted = menu.addAction(tin.tr("Wanted for the next order"), lambda: desk.want(crop_id))
    wanted.setCheckable(True)
    wanted.setChecked(crop_id in marked.wanted)
    menu.addAction(tin.tr("Add a seed lot…"), lambda: desk.add_lot(key))
    for lot, words in desk.lots(key):
        menu.addAction(tin.tr("Change lot: {0}").format(words), lambda lot=lot: desk.change_lot(lot))
    menu.addSeparator()
    menu.addAction(tin.tr("New variety…"), lambda: desk.new_variety(crop_id))
    menu.addAction(tin.tr("New crop like this…"), lambda: desk.new_crop(crop_id))
    if desk.is_own(key):
        menu.addAction(tin.tr("Change…"), lambda: desk.change(key))
        menu.addAction(tin.tr("Take it out…"), lambda: desk.remove(key))
    return menu
