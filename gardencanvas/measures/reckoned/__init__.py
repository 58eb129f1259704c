"""The measures of a layout, reckoned and put together."""
