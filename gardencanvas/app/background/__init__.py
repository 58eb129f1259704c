"""The background picture: read from an image file, laid under the plan, dimmed, locked, removed."""
