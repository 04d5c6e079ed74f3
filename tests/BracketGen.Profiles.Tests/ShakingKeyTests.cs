using BracketGen.Design.Inputs;
using BracketGen.Geometry;
using BracketGen.Strength.Shaking;

namespace BracketGen.Profiles.Tests;

/// <summary>Shaking of the mount, idle speed and the separation factor in profiles.</summary>
public sealed class ShakingKeyTests
{
    [Fact]
    public void NothingSaidIsAssumed()
    {
        var job = Samples.ReadJob(Samples.Files).Value!;
        Assert.Equal(Shaking.Usual, job.Body.Shaking);
        Assert.Equal(1.2, job.Preferences.MinFrequencyRatio);
        Assert.Equal(new(600, 0, Evidence.Assumed), ReadBody("[engine]\ncylinders = 4\nmax_speed = 6500\n").Body.Engine!.IdleSpeed);
    }

    [Fact]
    public void MountedOnChoosesAPublishedTest()
    {
        var plenum = ReadBody("[shaking]\nmounted_on = \"flexible plenum\"\ndamping = { value = 0.02, plus_minus = 0.005 }\n").Body.Shaking;
        Assert.Equal(Shaking.FlexiblePlenum with { Damping = new(0.02, 0.005) }, plenum);
        Assert.Equal(Evidence.Given, plenum.Evidence);
        Assert.Equal(Shaking.SolidManifold, ReadBody("[shaking]\nmounted_on = \"solid manifold\"\n").Body.Shaking);

        // Damping alone says nothing of the acceleration.
        Assert.Equal(Evidence.Assumed, ReadBody("[shaking]\ndamping = 0.03\n").Body.Shaking.Evidence);
    }

    [Fact]
    public void OnesOwnProfileIsInG()
    {
        var shaking = ReadBody("""
            [shaking]
            sine = [{ frequency = 50, acceleration = 2 }, { frequency = "200 Hz", acceleration = 4 }]
            random = [{ frequency = 10, density = 0.1 }, { frequency = 2000, density = 0.01 }]
            source = "measured"

            """).Body.Shaking;
        Assert.Equal((ShakingProfile.Own, Evidence.Measured), (shaking.Profile, shaking.Evidence));
        Assert.Equal([new SpectrumPoint(50, 2 * 9806.65), new(200, 4 * 9806.65)], shaking.Sine!.Points.AsEnumerable());
        Assert.Equal(0.1 * 9806.65 * 9806.65, shaking.Random!.At(10), 1e-6);
    }

    [Fact]
    public void IdleSpeedAndSeparationAreRead()
    {
        Assert.Equal(new(850, 20), ReadBody("[engine]\ncylinders = 4\nmax_speed = 6500\nidle_speed = { value = 850, plus_minus = 20 }\n").Body.Engine!.IdleSpeed);
        Assert.Equal(1.4, Samples.ReadWith(Samples.Job, "[document]", "min_frequency_ratio = 1.4\n\n[document]").Value!.Preferences.MinFrequencyRatio);
    }

    [Theory]
    [InlineData("[shaking]\nmounted_on = \"solid manifold\"\nsine = [{ frequency = 50, acceleration = 2 }, { frequency = 200, acceleration = 4 }]\n", "shaking.mounted_on")]
    [InlineData("[shaking]\nmounted_on = \"exhaust\"\n", "shaking.mounted_on")]
    [InlineData("[shaking]\nsine = [{ frequency = 200, acceleration = 2 }, { frequency = 200, acceleration = 4 }]\n", "shaking.sine[2].frequency")]
    [InlineData("[shaking]\nrandom = [{ frequency = 200, density = 2 }, { frequency = 100, density = 4 }]\n", "shaking.random[2].frequency")]
    [InlineData("[shaking]\nsine = [{ frequency = 200, acceleration = 2 }]\n", "shaking.sine")]
    [InlineData("[shaking]\nsine = [{ frequency = 200, acceleration = 2 }, { frequency = 300, acceleration = 0 }]\n", "shaking.sine[2].acceleration")]
    [InlineData("[shaking]\ndamping = 0\n", "shaking.damping")]
    [InlineData("[engine]\ncylinders = 4\nmax_speed = 700\nidle_speed = 800\n", "engine.idle_speed")]
    [InlineData("[engine]\ncylinders = 4\nmax_speed = 550\n", "engine.max_speed")]
    public void WhatCannotBeIsOneMistake(string written, string key) => Assert.Equal(
        key, Assert.Single(Samples.ReadWith(Samples.Body, "[return_springs]", written + "[return_springs]").Errors).Key);

    private static Job ReadBody(string written) => Samples.ReadWith(Samples.Body, "[return_springs]", written + "[return_springs]").Value!;
}
