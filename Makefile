# Every task of the project. `make help` lists them.
PYTHON ?= python3
# Long tests wait for processes more than they reckon: one worker more than there are cores.
WORKERS := $(shell expr $$(nproc) + 1)
VENV   := .venv
BIN    := $(VENV)/bin
PIP    := $(BIN)/python -m pip --disable-pip-version-check --quiet

# What Python compiled is kept, whatever this machine is set to: a dozen processes of the tests load the same.
unexport PYTHONDONTWRITEBYTECODE

.DEFAULT_GOAL := help
.PHONY: help setup setup-test demo test lint types check pictures train bench tune soak lock clean

help: ## list the tasks
	@grep -E '^[a-z-]+:.*## ' $(MAKEFILE_LIST) | sed -E 's/^([a-z-]+):.*## /\1\t/' | expand -t 14

$(BIN)/python:
	@$(PYTHON) -m venv $(VENV) || { echo "Python's venv module is missing: on Debian, install python3-venv."; exit 1; }

# The build backend comes from the lock too: pip would fetch an unpinned one under build isolation.
$(VENV)/.ready: pyproject.toml requirements.lock | $(BIN)/python
	@echo "Installing into $(VENV): about a minute, once."
	@$(PIP) install -c requirements.lock hatchling editables
	@$(PIP) install -c requirements.lock --no-build-isolation -e .
	@touch $@

# The lock is all that tests need, so that nothing has to be worked out; `pip check` says what it lacks. What is compiled
# is what is loaded, when it is first: not the greater part that nobody loads.
$(VENV)/.ready-test: pyproject.toml requirements.lock | $(BIN)/python
	@echo "Installing what tests need: a minute or two, once."
	@$(PIP) install --no-compile --no-deps -r requirements.lock
	@$(PIP) install --no-deps --no-build-isolation -e .
	@$(PIP) check
	@touch $@ $(VENV)/.ready

setup: $(VENV)/.ready ## make .venv and install what the bot needs

setup-test: $(VENV)/.ready-test ## the same, with what tests need

demo: setup ## play one day of an invented group over the real bot; ONCE=1 ends after it, ALL=1 prints all that is said, BRIEF=1 what a coach in a hurry reads
	@$(BIN)/bellwether rehearse $(if $(ONCE),--once) $(if $(ALL),--all) $(if $(BRIEF),--brief)

test: setup-test ## run every test, on every core
	@$(BIN)/pytest -q -n $(WORKERS) --dist worksteal

lint: setup-test ## style
	@$(BIN)/ruff check .
	@$(BIN)/ruff format --check .

types: setup-test ## types
	@$(BIN)/mypy

check: setup-test ## lint + types + tests, side by side
	@$(MAKE) --no-print-directory -j3 --output-sync=target lint types test

pictures: setup-test ## make the pictures of the README from the room, in docs/; needs Chromium
	@$(BIN)/python -m tests.pictures

train: setup-test ## learn from the examples in core/understanding and core/notation/labels, and from scores
	@$(BIN)/python -m tests.corpus.words
	@$(BIN)/python -m tests.corpus.training
	@$(BIN)/python -m tests.corpus.training_boards
	@$(BIN)/python -m tests.corpus.training_scores

bench: setup-test ## print the speed table
	@$(BIN)/python -m tests.benchmarks

soak: setup-test ## the long fault runs, and properties on new cases; SIZE=20 says how long, 1 is what make check does
	@BELLWETHER_SOAK=$(or $(SIZE),20) $(BIN)/pytest -q tests/soak $(shell git ls-files "tests/*_properties.py") --timeout 7200 -s

tune: setup-test ## look for better costs near those of the table, on the tuning half of the coaches' cases
	@$(BIN)/python -m tests.coach.tune

lock: $(BIN)/python ## write requirements.lock anew from what is installed
	@{ echo "# Exact versions of everything the project and its tests install. Written by 'make lock'."; \
	   $(BIN)/python -m pip freeze --exclude-editable; } > requirements.lock

clean: ## remove what was made here
	rm -rf $(VENV) .pytest_cache .mypy_cache .ruff_cache
