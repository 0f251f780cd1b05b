import { describe, expect, it } from "vitest";
import { dynamicClass, dynamics } from "../../src/band/dynamics.ts";

describe("dynamics", () => {
  it("run from ppp to fff", () => {
    expect(dynamics).toEqual(["ppp", "pp", "p", "mp", "mf", "f", "ff", "fff"]);
  });

  it("fall into the three columns of the cost tables", () => {
    expect(dynamics.map(dynamicClass)).toEqual(["p", "p", "p", "mf", "mf", "f", "f", "f"]);
  });
});
