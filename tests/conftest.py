pytest_plugins = ["tests.rehearsal_fixtures"]
