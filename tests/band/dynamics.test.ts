import { describe, expect, it } from "vitest";
import { dynamicClass, dynamicPosition, dynamics } from "../../src/band/dynamics.ts";

describe("dynamics", () => {
  it("run from ppp to fff", () => {
    expect(dynamics).toEqual(["ppp", "pp", "p", "mp", "mf", "f", "ff", "fff"]);
  });

  it("fall into the three columns of the cost tables", () => {
    expect(dynamics.map(dynamicClass)).toEqual(["p", "p", "p", "mf", "mf", "f", "f", "f"]);
  });

  it("have ascending places, pp at 0 and ff at 5", () => {
    const places = dynamics.map(dynamicPosition);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect([dynamicPosition("pp"), dynamicPosition("ff")]).toEqual([0, 5]);
  });
});
