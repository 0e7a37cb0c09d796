"""A house from a CSV of its openings, and the trim and stock of a JSON file, to the list for the yard."""

import json
from pathlib import Path

from longpoint_sdk import Client, problems

HERE = Path(__file__).parent
house = json.loads((HERE / "house.json").read_text())
with Client() as client:
    id = client.create_schedule({**house, "name": "Heron Cottage"}).value.id
    try:
        client.import_openings(id, (HERE / "house.csv").read_bytes())
    except problems.InvalidRequest as refusal:  # nothing was kept; every wrong cell is reported
        raise SystemExit("\n".join(map(str, refusal.errors))) from None
    cut_list = client.compute_schedule_cut_list(id).value.cut_list
for line in cut_list.buy:
    print(f"{line.quantity:>3} x {line.length.to('ft'):<7} {line.profile:<12} {line.cost:>7}")
print(f"{cut_list.cost:>32} {cut_list.currency}{'' if cut_list.proven else ', not proven cheapest'}")
