"""A house from a CSV of its openings, and the trim and stock of a JSON file, to the list for the yard."""

import csv
import json
from pathlib import Path

from longpoint_sdk import Client, types

HERE = Path(__file__).parent
READINGS = ("jamb_width", "leg_height", "jamb_depth")

house = json.loads((HERE / "house.json").read_text())
with (HERE / "house.csv").open(newline="", encoding="utf-8-sig") as file:
    openings = [
        types.OpeningIn(
            mark=row["mark"],
            room=row["room"],
            count=int(row["count"]),
            trim="painted",
            readings=types.ReadingsIn(**{name: row[name] for name in READINGS}),
        )
        for row in csv.DictReader(file)
    ]
with Client() as client:
    cut_list = client.compute_cut_list({**house, "openings": openings})
for line in cut_list.buy:
    print(f"{line.quantity:>3} x {line.length.to('ft'):<7} {line.profile:<12} {line.cost:>7}")
print(f"{cut_list.cost:>32} {cut_list.currency}{'' if cut_list.proven else ', not proven cheapest'}")
