"""A house's opening sheets as one PDF, set at the service while this waits or does something else."""

import json
from pathlib import Path

from longpoint_sdk import Client, calls, types

HERE = Path(__file__).parent
house = json.loads((HERE / "house.json").read_text())


def tell(job: types.JobAnswer) -> None:
    """Say where the job stands."""
    searched = ", ".join(f"{one.profile} {one.cost}" for one in job.progress)
    print(f"{job.state}, {job.ahead} before it {searched}".rstrip())


with Client() as client:
    id = client.create_schedule({**house, "name": "Heron Cottage"}).value.id
    client.import_openings(id, (HERE / "house.csv").read_bytes())
    job = client.begin(calls.get_schedule_sheet(id, "opening-sheet", accept="application/pdf"))
    pdf = job.result(tell)
print(f"{len(pdf.value) // 1024} kB of PDF")
