"""What is said of the slack in a plan: on the answer, and on the sheets that buy and cut."""

from __future__ import annotations

from collections.abc import Iterator

from longpoint.shop.build import CutList
from longpoint.shop.spare import spares
from longpoint.texts import Sentence, say


def slack_notes(cut_list: CutList) -> Iterator[Sentence]:
    """What stays free beside the pieces and at the ends of the sticks, and which sticks are spare."""
    planned = {plan.profile for plan in cut_list.plans}
    for stock in cut_list.house.stock:
        slack = stock.slack
        if stock.profile not in planned:
            continue
        if slack.per_miter or slack.per_piece:
            yield say(
                "note",
                "slack.allowance",
                profile=stock.profile,
                per_miter=slack.per_miter,
                per_piece=slack.per_piece,
            )
    for spare in spares(cut_list):
        if spare.quantity:
            yield say("note", "slack.spare", count=spare.quantity, profile=spare.profile, length=spare.length)
        if spare.missing:
            yield say("note", "slack.spare-missing", count=spare.missing, profile=spare.profile)
    if cut_list.plans and cut_list.house.clamp_length:
        yield say("note", "slack.clamp-length", length=cut_list.house.clamp_length)
