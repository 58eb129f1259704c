"""Forms for what a grower adds: varieties, crops and seed lots of their own."""
