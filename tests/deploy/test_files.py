"""The files of a deployment, read as what they are: no container can run here, so each promise is checked by itself."""

import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
import yaml

DEPLOY = Path(__file__).parents[2] / "deploy"
SYSTEMD = shutil.which("systemd-analyze")


def instructions() -> list[tuple[str, str]]:
    """The instructions of the container file, in order."""
    text = re.sub(r"^#.*\n", "", (DEPLOY / "Containerfile").read_text(), flags=re.MULTILINE)
    lines = text.replace("\\\n", " ").splitlines()
    return [
        (word, " ".join(rest.split())) for word, _, rest in (line.partition(" ") for line in lines if line)
    ]


def last_stage() -> list[tuple[str, str]]:
    found = instructions()
    start = max(index for index, (word, _) in enumerate(found) if word == "FROM")
    return found[start:]


class TestContainer:
    def test_it_knows_only_instructions_there_are(self):
        known = {"ARG", "CMD", "COPY", "ENTRYPOINT", "ENV", "EXPOSE", "FROM", "HEALTHCHECK", "RUN"}
        assert {word for word, _ in instructions()} <= known | {"STOPSIGNAL", "USER", "VOLUME", "WORKDIR"}

    def test_what_it_copies_is_there_and_let_through(self):
        let_through = (DEPLOY.parent / ".containerignore").read_text().splitlines()
        assert let_through[0] == "*"
        for word, rest in instructions():
            if word == "COPY" and not rest.startswith("--from"):
                source = rest.split()[0].replace("${LOCK}", "requirements.lock")
                assert (DEPLOY.parent / source).exists(), source
                assert any(Path(source).match(line[1:]) for line in let_through if line.startswith("!")), (
                    source
                )

    def test_it_installs_from_the_lock_by_hash_alone(self):
        (install,) = [rest for word, rest in instructions() if word == "RUN" and " pip " in rest]
        assert "--require-hashes" in install
        assert "--no-deps" in install
        assert "--only-binary :all:" in install

    def test_what_runs_has_no_rights(self):
        stage = last_stage()
        (user,) = [rest for word, rest in stage if word == "USER"]
        assert re.fullmatch(r"[1-9]\d*:[1-9]\d*", user), "a number, so that it can be checked not to be root"
        after = stage[stage.index(("USER", user)) :]
        assert not [rest for word, rest in after if word in ("RUN", "COPY", "ADD")]

    def test_what_runs_has_nothing_to_build_with(self):
        copies = [rest for word, rest in last_stage() if word == "COPY"]
        assert copies == ["--from=build /opt/longpoint /opt/longpoint"]
        assert not [rest for word, rest in last_stage() if word == "RUN" and re.search(r"apt|pip", rest)]

    def test_it_is_stopped_and_asked_in_the_way_the_service_knows(self):
        stage = dict(last_stage())
        assert stage["STOPSIGNAL"] == "SIGTERM"
        assert "/health/ready" in stage["HEALTHCHECK"]
        assert stage["ENTRYPOINT"] == '["python", "-m", "longpoint"]'

    def test_no_secret_is_baked_in(self):
        assert not re.search(r"password|secret|token", (DEPLOY / "Containerfile").read_text(), re.IGNORECASE)


COMPOSE = yaml.safe_load((DEPLOY / "compose.yaml").read_text())


class TestCompose:
    def test_there_are_two_replicas_workers_a_database_and_a_proxy(self):
        services = COMPOSE["services"]
        assert set(services) == {"database", "migrate", "one", "two", "worker", "proxy"}
        for name in ("one", "two", "worker"):
            assert services[name]["image"] == "longpoint"
            assert services[name]["depends_on"]["migrate"]["condition"] == "service_completed_successfully"

    @pytest.mark.parametrize("name", ["migrate", "one", "two", "worker", "proxy"])
    def test_a_service_can_write_nowhere_and_gains_no_rights(self, name):
        service = COMPOSE["services"][name]
        assert service["read_only"] is True
        assert service["cap_drop"] == ["ALL"]
        assert "no-new-privileges:true" in service["security_opt"]
        assert "privileged" not in service
        assert service["mem_limit"]

    def test_only_the_proxy_is_reached_from_outside(self):
        for name, service in COMPOSE["services"].items():
            assert ("ports" in service) is (name == "proxy")
            assert "outside" not in service["networks"] or name == "proxy"
        assert COMPOSE["networks"]["inside"]["internal"] is True

    def test_no_password_stands_in_it(self):
        text = (DEPLOY / "compose.yaml").read_text()
        for value in re.findall(r"(?:PASSWORD: |longpoint:)(\S+?)(?:@|\s)", text):
            assert value.startswith("${LONGPOINT_DB_PASSWORD"), value
        assert "/deploy/.env" in (DEPLOY.parent / ".gitignore").read_text()

    def test_a_replica_is_given_the_time_it_takes_to_stop(self):
        from longpoint.settings import Settings

        settings = Settings.from_environment({})
        notice = float(
            dict(re.findall(r"(LONGPOINT_NOTICE_SECONDS)=(\d+)", (DEPLOY / "Containerfile").read_text()))[
                "LONGPOINT_NOTICE_SECONDS"
            ]
        )
        for name in ("one", "two"):
            grace = int(COMPOSE["services"][name]["stop_grace_period"].removesuffix("s"))
            assert grace > notice + settings.drain_seconds

    def test_the_proxy_is_the_one_the_replicas_trust(self):
        trusted = COMPOSE["services"]["one"]["environment"]["LONGPOINT_TRUSTED_PROXIES"]
        assert COMPOSE["networks"]["inside"]["ipam"]["config"] == [{"subnet": trusted}]

    def test_what_is_mounted_is_there(self):
        for mount in COMPOSE["services"]["proxy"]["volumes"]:
            source = mount.split(":")[0]
            assert mount.endswith(":ro")
            assert source == "./tls" or (DEPLOY / source).exists()

    def test_the_proxy_spreads_over_the_replicas(self):
        upstream = (DEPLOY / "upstream.conf").read_text()
        assert re.findall(r"server (\w+):8000", upstream) == ["one", "two"]


@pytest.mark.skipif(SYSTEMD is None, reason="systemd-analyze is not on this machine")
class TestUnit:
    @pytest.fixture
    def unit(self, tmp_path: Path) -> Path:
        """The unit, with a program that is on this machine."""
        text = (DEPLOY / "longpoint.service").read_text()
        file = tmp_path / "longpoint.service"
        file.write_text(text.replace("/opt/longpoint/.venv/bin/python", sys.executable))
        return file

    def test_it_is_a_unit(self, unit):
        done = subprocess.run([str(SYSTEMD), "verify", str(unit)], capture_output=True, text=True, timeout=60)
        said = [line for line in done.stderr.splitlines() if "longpoint" in line]
        assert done.returncode == 0, done.stderr
        assert not said

    def test_little_is_open_to_it(self, unit):
        command = [str(SYSTEMD), "security", "--offline=true", "--threshold=20", str(unit)]
        done = subprocess.run(command, capture_output=True, text=True, timeout=60)
        assert done.returncode == 0, done.stdout[-300:] + done.stderr
