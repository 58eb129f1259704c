"""How long before or after something a job comes. All are common practice, for want of one source."""

# Seedlings from fine seed are pricked out with their first true leaves, two to three weeks after sowing.
PRICK_OUT_D, PRICK_OUT_WINDOW_D = 16, 7
# Large seed (beans, squash, maize) is sown one to a pot and not pricked out; clumps are not parted.
FINE_SEEDS_PER_GRAM = 50.0
LONG_NURSERY_D = 28  # what stands in the nursery for less goes straight from its tray to the bed
# A week to ten days of cool air before planting out.
HARDEN_OFF_D = 8
# Rows sown thickly are thinned when the seedlings can be held, three to four weeks after sowing.
THIN_D, THIN_WINDOW_D = 24, 10
# Days there are for sowing or planting in a week's work.
WEEK_D = 6
# Canes, nets and covers stand before the plants come.
BEFORE_D = 1
# What is left of a crop is cleared in the week after its last harvest.
CLEAR_WINDOW_D = 6
# What began longer before the season than this was the work of the layout before it: garlic and broad beans
# of autumn belong to the year in which they are eaten.
EARLIER_D = 200
