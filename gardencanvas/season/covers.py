"""What a cover does to the warmth under it."""

# A light fleece lifts air temperature by about 1–2 °C over the day and shields from about 2 °C of frost
# (28 °F outside, no frost inside): common practice in extension leaflets on row covers. A mean of 2 °C is
# taken for every warming cover; mesh does not warm.
WARMER_C = 2.0
SHIELDS_C = 2.0
