using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Rounds;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class TestRoundConfiguration : IEntityTypeConfiguration<TestRound>
{
    public void Configure(EntityTypeBuilder<TestRound> round)
    {
        round.ToTable("TestRounds");
        round.Property(it => it.Id).ValueGeneratedNever();
        round.Property(it => it.Note).HasMaxLength(TestRound.NoteLength);
        round.Property(it => it.Sizes).HasMaxLength(400);
        round.Property(it => it.RowVersion).IsConcurrencyToken();
        round.Property(it => it.ShownVersions).HasMaxLength(TestRound.ShownLength);
        round.Ignore(it => it.Plan);
        round.Ignore(it => it.Shown);
        round.HasOne<DesignVersion>().WithMany().HasForeignKey(it => new { it.DesignId, it.Version }).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class ShareLinkConfiguration : IEntityTypeConfiguration<ShareLink>
{
    public void Configure(EntityTypeBuilder<ShareLink> link)
    {
        link.ToTable("ShareLinks");
        link.Property(it => it.Id).ValueGeneratedNever();
        link.Property(it => it.TokenHash).HasMaxLength(32);
        link.HasOne<TestRound>().WithMany().HasForeignKey(it => it.RoundId).OnDelete(DeleteBehavior.Cascade);
        link.HasOne<Tester>().WithMany().HasForeignKey(it => it.TesterId).OnDelete(DeleteBehavior.Cascade);
        link.HasIndex(it => it.TokenHash).IsUnique();
    }
}

internal sealed class TesterConfiguration : IEntityTypeConfiguration<Tester>
{
    public void Configure(EntityTypeBuilder<Tester> tester)
    {
        tester.ToTable("Testers");
        tester.Property(it => it.Id).ValueGeneratedNever();
        tester.Property(it => it.Name).HasMaxLength(Tester.NameLength);
        tester.HasOne<TestRound>().WithMany().HasForeignKey(it => it.RoundId).OnDelete(DeleteBehavior.Cascade);
    }
}

internal sealed class TesterReportConfiguration : IEntityTypeConfiguration<TesterReport>
{
    public void Configure(EntityTypeBuilder<TesterReport> report)
    {
        report.ToTable("TesterReports");
        report.Property(it => it.Id).ValueGeneratedNever();
        report.Property(it => it.Yarn).HasMaxLength(TesterReport.YarnLength);
        report.Property(it => it.Words).HasMaxLength(TesterReport.WordsLength);
        report.Property(it => it.RowVersion).IsConcurrencyToken();
        report.Ignore(it => it.Details);
        report.HasOne<TestRound>().WithMany().HasForeignKey(it => it.RoundId).OnDelete(DeleteBehavior.Cascade);
        report.HasOne<Tester>().WithMany().HasForeignKey(it => it.TesterId).OnDelete(DeleteBehavior.Restrict);
        report.HasOne<Photo>().WithMany().HasForeignKey(it => it.PhotoId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class RemarkConfiguration : IEntityTypeConfiguration<Remark>
{
    public void Configure(EntityTypeBuilder<Remark> remark)
    {
        remark.ToTable("Remarks");
        remark.Property(it => it.Id).ValueGeneratedNever();
        remark.Property(it => it.Row).HasMaxLength(Remark.PlaceLength);
        remark.Property(it => it.Word).HasMaxLength(Remark.PlaceLength);
        remark.Property(it => it.Text).HasMaxLength(Remark.TextLength);
        remark.Property(it => it.Answer).HasMaxLength(Remark.TextLength);
        remark.Property(it => it.Answered).HasConversion<string>().HasMaxLength(20);
        remark.HasOne<TesterReport>().WithMany().HasForeignKey(it => it.ReportId).OnDelete(DeleteBehavior.Cascade);
        remark.HasOne<Photo>().WithMany().HasForeignKey(it => it.PhotoId).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class CorrectionConfiguration : IEntityTypeConfiguration<Correction>
{
    public void Configure(EntityTypeBuilder<Correction> correction)
    {
        correction.ToTable("Corrections");
        correction.Property(it => it.Id).ValueGeneratedNever();
        correction.Property(it => it.Words).HasMaxLength(Correction.WordsLength);
        correction.HasOne<DesignVersion>().WithMany().HasForeignKey(it => new { it.DesignId, it.Version }).OnDelete(DeleteBehavior.Restrict);
    }
}

internal sealed class CorrectionWordingConfiguration : IEntityTypeConfiguration<CorrectionWording>
{
    public void Configure(EntityTypeBuilder<CorrectionWording> wording)
    {
        wording.ToTable("CorrectionWordings");
        wording.Property(it => it.Id).ValueGeneratedNever();
        wording.Property(it => it.Words).HasMaxLength(Correction.WordsLength);
        wording.HasOne<Correction>().WithMany().HasForeignKey(it => it.CorrectionId).OnDelete(DeleteBehavior.Cascade);
    }
}

internal sealed class CorrectionPageConfiguration : IEntityTypeConfiguration<CorrectionPage>
{
    public void Configure(EntityTypeBuilder<CorrectionPage> page)
    {
        page.ToTable("CorrectionPages");
        page.Property(it => it.Id).ValueGeneratedNever();
        page.HasOne<Design>().WithOne().HasForeignKey<CorrectionPage>(it => it.DesignId).OnDelete(DeleteBehavior.Restrict);
    }
}
