"""Validates JSON files against a schema: check_schema.py SCHEMA FILE..."""
import json
import sys

import jsonschema

with open(sys.argv[1], encoding="utf-8") as file:
    schema = json.load(file)
jsonschema.Draft202012Validator.check_schema(schema)
validator = jsonschema.Draft202012Validator(schema)
faults = 0
for name in sys.argv[2:]:
    with open(name, encoding="utf-8") as file:
        for fault in validator.iter_errors(json.load(file)):
            print(name, "/".join(map(str, fault.path)), fault.message[:200])
            faults += 1
sys.exit(1 if faults else 0)
