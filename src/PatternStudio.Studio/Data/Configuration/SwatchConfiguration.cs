using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class SwatchConfiguration : IEntityTypeConfiguration<Swatch>
{
    public void Configure(EntityTypeBuilder<Swatch> swatch)
    {
        swatch.ToTable("Swatches");
        swatch.Property(it => it.Id).ValueGeneratedNever();
        swatch.Property(it => it.Stitch).HasMaxLength(Swatch.StitchLength);
        swatch.Property(it => it.Note).HasMaxLength(Swatch.NoteLength);
        swatch.Property(it => it.Pattern).HasMaxLength(Swatch.PatternLength);
        swatch.Property(it => it.Counted).HasConversion<string>().HasMaxLength(20).HasDefaultValue(Counting.Stitches).HasSentinel(Counting.Stitches);
        swatch.Property(it => it.RowVersion).IsConcurrencyToken();
        swatch.Ignore(it => it.Details);
        swatch.HasOne<Design>().WithMany().HasForeignKey(it => it.DesignId).OnDelete(DeleteBehavior.Restrict);
        swatch.HasOne<Photo>().WithMany().HasForeignKey(it => it.PhotoId).OnDelete(DeleteBehavior.Restrict);
        swatch.HasOne<Yarn>().WithMany().HasForeignKey(it => it.YarnId).OnDelete(DeleteBehavior.Restrict);
    }
}
