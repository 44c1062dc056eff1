import pytest

from bot.settings import Pace, read_settings
from core.errors import InputError


@pytest.fixture(autouse=True)
def _bare_environment(monkeypatch, tmp_path):
    monkeypatch.chdir(tmp_path)
    for name in ("TOKEN", "API_URL", "DATABASE", "LISTEN", "CLOCK_URL", "PACE"):
        monkeypatch.delenv(f"BELLWETHER_{name}", raising=False)


@pytest.fixture
def setting(monkeypatch):
    def set_(name, value):
        monkeypatch.setenv(f"BELLWETHER_{name}", value)

    set_("TOKEN", "123:abc")
    return set_


def test_a_token_is_all_it_needs(setting):
    settings = read_settings()
    assert settings.token.get_secret_value() == "123:abc"
    assert settings.database == "bellwether.db"
    assert settings.pace is Pace.PLATFORM
    assert settings.address is None


def test_a_token_may_stand_in_a_file(tmp_path):
    (tmp_path / ".env").write_text("BELLWETHER_TOKEN=123:abc\nSOMETHING_ELSE=1\n")
    assert read_settings().token.get_secret_value() == "123:abc"


@pytest.mark.parametrize("token", [None, ""])
def test_a_missing_token_is_named(token, monkeypatch):
    if token is not None:
        monkeypatch.setenv("BELLWETHER_TOKEN", token)
    with pytest.raises(InputError, match=r"^BELLWETHER_TOKEN: is not set\."):
        read_settings()


def test_the_token_is_never_shown(setting):
    assert "123:abc" not in repr(read_settings())


@pytest.mark.parametrize(
    ("listen", "address"),
    [("127.0.0.1:8080", ("127.0.0.1", 8080)), ("localhost:0", ("localhost", 0)), ("[::1]:80", ("::1", 80))],
)
def test_where_to_listen_is_a_host_and_a_port(listen, address, setting):
    setting("LISTEN", listen)
    assert read_settings().address == address


@pytest.mark.parametrize("listen", ["8080", "127.0.0.1:", "here", "host:port"])
def test_what_is_no_host_and_port_is_refused(listen, setting):
    setting("LISTEN", listen)
    with pytest.raises(InputError, match="BELLWETHER_LISTEN: should be host:port"):
        read_settings()
