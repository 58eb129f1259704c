"""The parts of the site dialog: place, bearing, monthly climate, frost."""
